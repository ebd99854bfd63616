import type { ProblemCatalogue } from "../catalogue.js";
import { boundsText, isSigned, near, numberMeant, written } from "../problem-words.js";

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
const didYouMean = (suggestion: string): string => `¿quiso decir "${suggestion}"?`;

export const problems: ProblemCatalogue = {
  "not-json": ({ line, column }) =>
    `no es JSON válido desde la línea ${line}, columna ${column}; busque ahí una coma, una comilla o un corchete que falte, o un número con coma en vez de punto`,
  "not-a-case": ({ expected, got }) =>
    `no es un caso de Halfturn: "format" tiene que ser "${expected}" y es ${got}; dé un fichero hecho con "halfturn new"`,
  "wrong-version": ({ got, newest }) =>
    `aquí no se conoce la versión ${got} del caso; este programa lee hasta la versión ${newest}: actualice el programa o guarde el caso como versión ${newest}`,
  "too-large": ({ of, got, limit }, n) =>
    of === "bytes"
      ? `${n.plain(got / 1e6, 1)} MB es más de lo que un caso puede tener (${n.plain(limit / 1e6, 1)} MB); compruebe que es el caso y no un registro`
      : `listas y objetos anidados ${got} veces, se permiten ${limit}; revise los corchetes`,
  missing: ({ allowed }, n) => (allowed ? `falta; escriba ${n.any(allowed)}` : "falta; añádalo"),
  "wrong-type": ({ expected, got, value }) => {
    const meant = expected === "number" && got === "string" ? numberMeant(value) : null;
    if (meant !== null) return `es "${value}", que es un texto y no un número; escriba ${meant}: con punto, sin comillas ni unidad`;
    return `tiene que ser ${EXPECTED[expected]} y es ${KINDS[got]} (${value}); escriba ${EXPECTED[expected]}`;
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
  "not-allowed": ({ got, allowed, suggestion }, n) =>
    `aquí no se conoce "${got}"; ${near(suggestion, didYouMean)}escriba ${n.any(allowed)}`,
  "wrong-form": ({ expected, got }) => `"${got}" no es ${FORMS[expected]}`,
  "unknown-key-near": ({ key, suggestion }) =>
    `no se conoce la clave "${key}"; ${didYouMean(suggestion)} Corríjala, o empiece una clave propia por x-`,
  "key-not-here": ({ key }) => `la clave "${key}" no corresponde a esta forma de entrada; quítela`,
  "unknown-shaft": ({ got, allowed, suggestion }, n) =>
    `no hay ningún árbol "${got}" en esta línea de transmisión; ${near(suggestion, didYouMean)}escriba ${n.any(allowed)} ("source" es la salida de la caja de cambios o de transferencia, "driven" el piñón)`,
  "unknown-reference": ({ of, got, allowed, suggestion }, n) =>
    allowed.length === 0
      ? `no hay ${OF[of]} "${got}" en este caso, ni otra cosa así; añádala primero`
      : `no hay ${OF[of]} "${got}" en este caso; ${near(suggestion, didYouMean)}escriba ${n.any(allowed)}`,
  "duplicate-id": ({ id, first }) => `el identificador "${id}" ya está en ${first}; póngale otro a este`,
  "reserved-id": ({ id, of }) =>
    of === "accessory"
      ? `"${id}" es el nombre de una pieza que todo vehículo tiene; póngale otro identificador al accesorio`
      : `"${id}" es el nombre de un extremo de la línea de transmisión; póngale otro identificador al tramo`,
  "count-mismatch": ({ of, expected, got }) =>
    of === "sections"
      ? `${got} tramos, pero las juntas anotadas piden ${expected} (siempre un tramo menos que juntas); añada o quite tramos o juntas`
      : `la comprobación del cero tiene ${got === 1 ? "1 lectura" : `${got} lecturas`}, y van por pares, primera y vuelta; deje ${expected}`,
  contradiction: ({ key, relation, other, got, limit }, n) =>
    `"${key}" es ${written(got, n)} y tiene que ser ${relation === "at-least" ? "al menos" : "menor que"} "${other}" (${written(limit, n)}); corrija uno de los dos`,
  "same-shaft": ({ shaft }) =>
    `una lectura con cero relativo compara dos árboles, y los dos son "${shaft}"; nombre el árbol donde se puso a cero y el árbol donde se leyó`,
  "unreadable-tyre": ({ got, why }) =>
    `${why === "unreadable" ? `"${got}" no se puede leer como medida de neumático; escríbala como en el flanco, p. ej. 265/70R17` : `el diámetro de "${got}" no se deduce de la medida y aquí no se conoce; déjela`}, y dé "rollingCircumferenceMm": los milímetros que avanza una vuelta de la rueda cargada`,
};
