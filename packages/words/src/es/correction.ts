import { changeAmount, firstChangeAmount } from "../change-amount.js";
import type { CorrectionWords } from "../correction-words.js";
import { choices } from "../problem-words.js";
import { instructions } from "./correction-instructions.js";
import { limits } from "./correction-limits.js";
import { reasons } from "./correction-reasons.js";
import { CHOICES } from "./problems.js";

const KINDS: Readonly<Record<string, string>> = {
  angle: "un ángulo",
  length: "una longitud",
  torque: "un par",
  speed: "una velocidad de marcha",
  rotation: "una velocidad de giro",
};
const SAMPLE = { deg: "2deg", mm: "6mm", step: "1step" } as const;
const UNITS = { deg: "grados", mm: "milímetros", step: "pasos de estriado" } as const;

export const correction: CorrectionWords = {
  instructions,
  reasons,
  limits,
  changeProblems: {
    "change-form": ({ got }) => `"${got}" no es un cambio; escriba ID=CANTIDAD, como "wedge=2deg", "spacer=-6mm" o "front=1step"`,
    "no-adjusters": () => 'el caso no da nada que se pueda ajustar; añada al menos una entrada a "adjusters" con sus existencias',
    "unknown-adjuster": ({ got, ...which }, n) => `no hay ajuste "${got}" en este caso; ${choices(which, n, CHOICES)}`,
    "adjuster-twice": ({ adjuster }) => `"${adjuster}" se da más de una vez; dé toda su cantidad una vez`,
    "unit-missing": ({ adjuster, got, expected }) =>
      `"${got}" no lleva unidad; "${adjuster}" va en ${UNITS[expected]}, así que escriba ${adjuster}=${SAMPLE[expected]}`,
    "wrong-unit": ({ adjuster, got, expected }) =>
      `"${got}" está en otra unidad; "${adjuster}" va en ${UNITS[expected]}, así que escriba ${adjuster}=${SAMPLE[expected]}`,
    "amount-unreadable": ({ adjuster, got, expected }, _, fault) =>
      `"${got}" no se puede leer: ${fault}; escriba ${adjuster}=${SAMPLE[expected]}`,
    "steps-not-whole": ({ adjuster, got }) => `"${got}" no es un número entero de pasos de estriado; escriba ${adjuster}=${SAMPLE.step}`,
    "beyond-stock": ({ adjuster, amount, unit, minimum, maximum }, n) =>
      `${changeAmount(amount, unit, n)} pasa de las existencias de "${adjuster}"; escriba de ${firstChangeAmount(minimum, unit, n)} a ${changeAmount(maximum, unit, n)}, o añada la medida a sus existencias`,
    "beyond-fitted": ({ adjuster, amount, unit, fitted }, n) =>
      `no se pueden quitar ${changeAmount(Math.abs(amount), unit, n)} en "${adjuster}", donde hay ${changeAmount(fitted, unit, n)}; no quite más que eso`,
  },
  quantityFaults: {
    "quantity.empty": () => "no hay nada escrito",
    "quantity.number-expected": () => "primero va un número",
    "quantity.unexpected": ({ found }) => `"${found}" no va ahí`,
    "quantity.unknown-unit": ({ unit, found }) => `"${found ?? unit}" no es una unidad conocida aquí`,
    "quantity.unit-of-another-kind": ({ kind, expected }) =>
      `es ${KINDS[String(kind)] ?? kind} donde va ${KINDS[String(expected)] ?? expected}`,
    "quantity.unit-expected": () => "el segundo número no lleva unidad",
    "quantity.unit-out-of-order": ({ unit }) => `"${unit}" no puede seguir a la unidad anterior`,
    "quantity.part-too-large": ({ below, unit }) => `la parte en "${unit}" ha de ser menor que ${below}`,
    "quantity.fraction-before-part": () => "solo la última parte puede llevar decimales",
    "quantity.second-decimal-sign": () => "lleva dos signos decimales",
    "quantity.zero-denominator": () => "una fracción no puede tener cero debajo",
    "quantity.improper-fraction": () => "la fracción tras un entero ha de ser menor que uno",
    "quantity.too-large": () => "el número es demasiado grande",
  },
  looks: {
    "thick-end-turned-round": "La cuña puede estar al revés: mire hacia dónde apunta su borde grueso.",
    "change-not-taken": "El cambio parece no haberse hecho, o algo lo absorbe: mire si está montado siquiera.",
    "amount-fitted-differs": "Mida lo que se montó de verdad: puede haber entrado otra medida que la prevista.",
    "axle-not-seated": "El eje puede no asentar: mire los tornillos centrales y el apriete de las abrazaderas en U.",
    "bearing-to-joint-length": "Mida otra vez del soporte intermedio a la junta que tiene al lado.",
    "lengths-and-arms":
      "Mida otra vez longitudes y brazos del caso: longitud de los tramos, del centro del eje a la junta, pivote y apoyo.",
    "other-ride-height":
      "Las dos mediciones pueden ser de alturas distintas: compare carga, neumáticos y cómo se había asentado el vehículo.",
    "moved-without-a-change":
      "Se ha movido un árbol que nada previsto debía mover: busque un apoyo blando, un soporte flojo o una ballesta cedida.",
    "gauge-placing": "Coloque otra vez el medidor en los mismos puntos limpios y haga la comprobación girándolo.",
  },
  predictionVerdicts: {
    confirmed: "Todos los árboles están como se predijo, dentro de la incertidumbre de ambos.",
    differs: "No todos los árboles están como se predijo.",
    "not-gauged": "Desde entonces no se ha medido ningún árbol.",
  },
  amounts: {
    "axle-wedge": (amount, positive) => `${amount} con el morro del piñón hacia ${positive ? "arriba" : "abajo"}`,
    "support-drop": (amount, positive) => `${amount} más ${positive ? "bajo" : "alto"}`,
    "support-shift": (amount, positive) => `${amount} hacia la ${positive ? "izquierda" : "derecha"}`,
    "mount-spacer": (amount, positive) => `${amount} más ${positive ? "alto" : "bajo"}`,
    "ride-height": (amount, positive) => `carrocería ${amount} más ${positive ? "alta" : "baja"}`,
    rephase: (amount, positive) => `${amount} en sentido ${positive ? "horario" : "antihorario"}`,
    "link-length": (amount, positive) => `${amount} más ${positive ? "largo" : "corto"}`,
  },
  missing: {
    length: (name) => `longitud de ${name}, de centro a centro de junta`,
    "centre-to-joint": () => "del centro del eje a la última junta",
    bearing: (name) => `del soporte intermedio a la junta ${name}`,
    "spring-position": () => "si la ballesta va por encima o por debajo del eje",
    "pad-length": (name) => `largo del asiento de la ballesta (${name})`,
    slip: (name) => `engrane y recorrido del estriado deslizante${name === "" ? "" : ` de ${name}`}`,
    "first-joint": () => "dónde está la primera junta respecto a la de la primera línea",
    "axle-guide": () => "ballestas o brazos que guían el eje",
  },
  steps: (amount, one) => `${amount} ${one ? "paso" : "pasos"} de estriado`,
  asGauged: "como se midió",
  nothing: "no cambiar nada",
  predicted: "Lo que haría el cambio",
  plans: "Planes",
  planNumber: (number) => `Plan n.º ${number}`,
  columns: { chance: "Prob.", labour: "Trabajo", margin: "Margen", changes: "Cambios" },
  readPlans:
    "Prob.: con qué frecuencia se cumplen todos los límites en todos los estados, sobre todo lo que el inclinómetro, la cinta y los supuestos dejan abierto; con ≤ no cuenta el estriado deslizante, porque no se midió. Trabajo: trabajo y piezas, en la medida del caso. Margen: lo que queda del límite más justo con la mejor estimación; bajo cero, se pasa.",
  chance: (share) => `probabilidad de que se cumplan todos los límites: ${share}`,
  chanceUnknown: (share) =>
    `probabilidad desconocida, pues no se midió el deslizamiento o una longitud (${share} para lo que se puede calcular)`,
  labour: (amount) => `mano de obra y piezas: ${amount}`,
  state: "Estado",
  slipTravel: "Deslizamiento",
  pulledOut: (length) => `${length} hacia fuera`,
  pushedIn: (length) => `${length} hacia dentro`,
  arrow: (before, after) => `${before} → ${after}`,
  limitOf: (limit, part) => `${limit} de ${part}`,
  tightest: (limit, value, bound, state) => `Lo más justo: ${limit}, ${value} frente a ${bound}, en el estado ${state}.`,
  whatToDo: "Qué hacer",
  caution: (text) => `Precaución: ${text}`,
  cautionAsAt: (step) => `Precaución como en el paso ${step}.`,
  unchanged: (driveline) => `${driveline}: nada cambia.`,
  unlikely: "Aun con este plan es más probable pasar un límite que cumplirlos todos: mida otra vez antes de montar nada.",
  comparisons: "En comparación",
  doingNothing: "No hacer nada",
  bestSingle: "El cambio único que más ayuda",
  noSingle: "ningún cambio por sí solo ayuda",
  withoutAxle: "Sin tocar el eje",
  none: "no hay nada que elegir",
  noneBetter: "nada de las existencias mejora el no hacer nada",
  cutToMeasure: "Un solo cambio hecho a medida",
  notStocked: (change) => `${change}: no hay existencias de esta medida, así que habría que hacerla o pedirla`,
  toMeasure: "Falta por medir",
  nothingToMeasure: "No falta ninguna medida.",
  measureGain: (what, gain) => `${what}: quita hasta ${gain} a la incertidumbre de un ángulo de junta`,
  measureFirst: (what) => `${what}: antes de montar nada`,
  infeasible: "Nada de lo que hay en existencias cumple todos los límites.",
  nearest: (changes) => `Lo más cercano: ${changes}.`,
  blocks: "Qué lo impide",
  blockLimit: (limit, value, bound, state) => `${limit}: ${value} frente a un límite de ${bound}, en el estado ${state}`,
  blockHard: (changes, why) => `${changes} bastaría, pero ${why}`,
  notUsed: "Ajustes que no se pudieron usar",
  leftOut: "Queda fuera",
  neverGauged: (driveline) =>
    `${driveline} no se midió nunca, así que no se dice nada de ella; no se sabe qué le hace un cambio en el grupo motor`,
  learned: (corrections, readings) =>
    `Las longitudes y los brazos van corregidos con lo que se midió tras ${corrections === 1 ? "una corrección anterior" : `${corrections} correcciones anteriores`} (${readings} lecturas).`,
  notLearned:
    "Lo medido tras una corrección anterior no encaja con lo que esa corrección debía hacer, así que no se aprendió nada de ella: las longitudes quedan como se midieron con la cinta.",
  examined: (count) => `${count} combinaciones revisadas.`,
  anglesOnly: "Falta una longitud: solo se giraron las piezas que giran, no se movió ningún centro de junta.",
  neverFit: "Esto se puede mirar, nunca montar:",
  chosen: (number, path) => `Plan ${number} anotado en ${path}.`,
  chooseHint: (path, number) => `Para anotar el plan ${number} en el caso: halfturn plan ${path} --choose ${number}`,
  showHint: (path) => `Para ver los pasos de un plan: halfturn plan ${path} --show 1`,
  searching: (share) => `Repasando las existencias: ${share}`,
  stopped: "Detenido a mano. No se escribió nada.",
  foretold: "Predicho",
  measured: "Medido después",
  lookAt: "Qué mirar",
  chosenOn: (date) => `Elegido el ${date}.`,
};
