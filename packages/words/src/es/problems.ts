import type { ProblemCatalogue } from "../catalogue.js";
import { boundsText, choices, isSigned, numberMeant, written } from "../problem-words.js";

const EXPECTED = {
  number: "un número",
  "whole-number": "un número entero",
  string: "un texto entre comillas",
  boolean: "true o false",
  object: "un objeto entre { }",
  array: "una lista entre [ ]",
} as const;

const KINDS = {
  null: "null",
  boolean: "true o false",
  number: "un número",
  string: "un texto",
  array: "una lista",
  object: "un objeto",
} as const;

const OF = {
  driveline: "ninguna línea de transmisión",
  section: "ningún tramo",
  joint: "ninguna junta",
  gear: "ninguna marcha",
} as const;

const FORMS = {
  id: "un identificador: primero una letra minúscula, después minúsculas, cifras y guiones, como tramo-delantero",
  "joint-id": "un identificador de junta: primero una letra, después letras, cifras y guiones, como J1",
  date: "una fecha: ISO 8601, como 2026-05-18 o 2026-05-18T09:30:00Z",
  "finding-code": "el código de un hallazgo, como gauging.not-at-ride-height",
} as const;

const BOUNDS = {
  atLeast: (n: string) => `${n} como mínimo`,
  above: (n: string) => `mayor que ${n}`,
  atMost: (n: string) => `${n} como máximo`,
  below: (n: string) => `menor que ${n}`,
  and: "y",
};
/** How what may stand in a place is put. */
export const CHOICES = {
  write: (allowed: string) => `escriba ${allowed}`,
  meant: (suggestion: string, allowed: string) => `lo más probable es que sea "${suggestion}" (se admite: ${allowed})`,
};
const RELATIONS = { "at-least": "al menos", "at-most": "como mucho", "less-than": "menor que" } as const;

export const problems: ProblemCatalogue = {
  "empty-file": () => 'no hay nada en él; haga un caso con "halfturn new", o dé el archivo que lo tiene',
  "not-json": ({ line, column }) =>
    `no es JSON válido desde la línea ${line}, columna ${column}; busque ahí una coma, una comilla o un corchete que falte, o un número con coma en vez de punto`,
  "not-a-case": ({ expected, got }) =>
    `no es un caso de Halfturn: "format" tiene que ser "${expected}" y es ${got}; dé un archivo hecho con "halfturn new"`,
  "wrong-version": ({ got, newest }) =>
    `aquí no se conoce la versión ${got} del caso; este programa lee hasta la versión ${newest}: actualice el programa o guarde el caso como versión ${newest}`,
  "too-large": ({ of, got, limit }, n) =>
    of === "bytes"
      ? `${n.plain(got / 1e6, 1)}\u00a0MB es más de lo que un caso puede tener (${n.plain(limit / 1e6, 1)}\u00a0MB); compruebe que es el caso y no un registro`
      : `listas y objetos anidados ${got} veces, se permiten ${limit}; revise los corchetes`,
  missing: ({ allowed }, n) => (allowed ? `falta; escriba ${n.any(allowed)}` : "falta; añádalo"),
  "wrong-type": ({ expected, got, value, example }) => {
    const meant = expected === "number" && got === "string" ? numberMeant(value) : null;
    if (meant !== null) return `es "${value}", que es un texto y no un número; escriba ${meant}: con punto, sin comillas ni unidad`;
    return `tiene que ser ${EXPECTED[expected]} y es ${KINDS[got]} (${value}); escriba ${example === undefined ? EXPECTED[expected] : `algo como ${example}`}`;
  },
  "out-of-range": (params, n) => {
    const got = written(params.got, n);
    const bounds = boundsText(params, n, BOUNDS);
    if (params.of === "number" && isSigned(params))
      return `es ${got} y nunca es negativo; escriba su tamaño, y el sentido con la palabra que va al lado`;
    if (params.of === "number") return `es ${got} y tiene que ser ${bounds}; corríjalo`;
    return params.of === "list"
      ? `tiene ${got} elementos y debe tener ${bounds}; añada o quite`
      : `tiene ${got} caracteres y debe tener ${bounds}; alárguelo o acórtelo`;
  },
  "not-allowed": ({ got, ...which }, n) => `aquí no se conoce "${got}"; ${choices(which, n, CHOICES)}`,
  "wrong-form": ({ expected, got }) => `"${got}" no es ${FORMS[expected]}`,
  "unknown-key-near": ({ key, suggestion }) =>
    `no se conoce la clave "${key}"; ¿quiso decir "${suggestion}"? Corríjala, o empiece una clave propia por x-`,
  "key-not-here": ({ key }) => `la clave "${key}" no corresponde a esta forma de entrada; quítela`,
  "unknown-shaft": ({ got, ...which }, n) =>
    `no hay ningún árbol "${got}" en esta línea de transmisión; ${choices(which, n, CHOICES)} ("source" es la salida de la caja de cambios o de transferencia, "driven" el piñón)`,
  "unknown-reference": ({ of, got, ...which }, n) =>
    which.allowed.length === 0
      ? `no hay ${OF[of]} "${got}" en este caso, ni otra cosa así; añádala primero`
      : `no hay ${OF[of]} "${got}" en este caso; ${choices(which, n, CHOICES)}`,
  "duplicate-id": ({ id, first }) => `el identificador "${id}" ya está en ${first}; póngale otro a este`,
  "reserved-id": ({ id, of }) =>
    of === "accessory"
      ? `"${id}" es el nombre de una pieza que todo vehículo tiene; póngale otro identificador al accesorio`
      : `"${id}" es el nombre de un extremo de la línea de transmisión; póngale otro identificador al tramo`,
  "count-mismatch": ({ of, expected, got }) =>
    of === "sections"
      ? `${got} tramos, pero las juntas anotadas piden ${expected} (siempre un tramo menos que juntas); añada o quite tramos o juntas`
      : `la comprobación del cero tiene ${got === 1 ? "1 lectura" : `${got} lecturas`}, y van por pares, primera y vuelta; deje ${expected}`,
  contradiction: ({ key, relation, other, got, limit, builtIn }, n) => {
    const first = `"${key}" es ${written(got, n)} y tiene que ser ${RELATIONS[relation]} "${other}"`;
    return builtIn
      ? `${first}, que es ${written(limit, n)} mientras el caso no lo fije; corrija este o fije aquel`
      : `${first} (${written(limit, n)}); corrija uno de los dos`;
  },
  "face-reading": ({ got, offPlumb, marked }, n) =>
    marked
      ? `es ${written(got, n)}, pero una cara transversal al árbol se lee en grados respecto a la plomada; escriba ${offPlumb}`
      : `es ${written(got, n)}: tan cerca de 90 el inclinómetro estaba en una cara transversal al árbol; escriba al lado "face": "square", en "deg" lo que se aparta de la plomada (${offPlumb}), y con "topLeans" hacia dónde se inclina su parte alta`,
  "length-unit": ({ got, meant }, n) =>
    `es ${written(got, n)}, muy poco para una longitud en milímetros (mm); si se midió en metros, escriba ${meant}`,
  "same-shaft": ({ shaft }) =>
    `una lectura con cero relativo compara dos árboles, y los dos son "${shaft}"; nombre el árbol donde se puso a cero y el árbol donde se leyó`,
  "unreadable-tyre": ({ got, why }) =>
    `${why === "unreadable" ? `"${got}" no se puede leer como medida de neumático; escríbala como en el flanco, p. ej. 265/70R17` : `el diámetro de "${got}" no se deduce de la medida y aquí no se conoce; déjela`}, y dé "rollingCircumferenceMm": los milímetros que avanza una vuelta de la rueda cargada`,
};
