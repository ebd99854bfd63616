import type { Terminal } from "../terminal.js";
import { converting } from "./converting.js";
import { listening } from "./listening.js";
import { serving } from "./serving.js";

const typed = (near: string): string => (near === "" ? "" : `; ¿quiso decir ${near}?`);

export const terminal: Terminal = {
  brief: "Ángulos de las juntas, compensación y movimiento de una línea de transmisión, a partir de un caso",
  description:
    "Halfturn lee un caso: una línea de transmisión y lo que se midió en ella. Dice cómo trabaja cada junta, qué dejan sin compensar, con cuánta seguridad, y qué hacer a continuación.",
  commands: {
    new: "Escribir un caso nuevo para una disposición",
    validate: "Comprobar un caso y decir qué le falta",
    analyse: "Calcular ángulos, compensación y movimiento con lo medido",
    predict: "Decir qué haría un cambio antes de montar nada",
    plan: "Buscar la corrección menos invasiva que permiten las existencias",
    orders: "Decir qué gira a qué ritmo a una velocidad y con qué órdenes puede vibrar",
    report: "Escribir el informe de un caso en PDF o HTML",
    completion: "Completar órdenes en el intérprete",
    completionInstall: "Instalar el completado para bash (añade una línea a ~/.bashrc)",
    completionUninstall: "Quitar el completado para bash",
  },
  descriptions: {
    new: "Escribe un caso válido con cada árbol y junta en su sitio y nada medido todavía. Un archivo que ya existe se deja como está, salvo con --force.",
    validate:
      "Imprime cada problema del archivo, una línea por problema con su lugar y el remedio, o dice que es válido y qué le falta.\nSalida 0: válido. 2: no válido o no legible.",
    analyse:
      "Sin --stage ni --gauging se toma la última medición de la última etapa de cada línea. --accept anula un hallazgo de parada y lo anota en el caso.\nSalida 0: calculado, sea cual sea el veredicto. 1: no se pudo responder nada, o con --strict se pasa un límite o hay un hallazgo de parada abierto. 2: entrada o uso incorrectos.",
    predict:
      "Cada --change nombra un elemento de ajuste del caso y su medida con su unidad: --change cuna=2deg --change suplemento=-6mm --change tramo=1step. El signo +: morro del piñón arriba, soporte más bajo o hacia la izquierda del vehículo, apoyo o carrocería más altos, brazo más largo, horquilla del extremo conducido en sentido horario vista desde la salida.\nSalida 0: calculado, sea cual sea el veredicto. 1: hay un hallazgo de parada, no se midió algo que hace falta, o el caso no tiene elementos de ajuste. 2: entrada o uso incorrectos.",
    plan: "Repasa todas las combinaciones de --max-changes elementos de ajuste del caso como mucho y las ordena por la probabilidad de que se cumplan todos los límites en todos los estados, después por el trabajo y después por lo que queda del límite más justo. --show imprime los pasos de otro plan que el primero; --choose además lo escribe en el caso, para compararlo con la próxima medición.\nSalida 0: calculado, sea cual sea el veredicto. 1: hay un hallazgo de parada, no se midió una fase u otra cosa que hace falta, o el caso no tiene elementos de ajuste. 2: entrada o uso incorrectos. 130: detenido a mano.",
    orders:
      "Las frecuencias salen del neumático y de las relaciones del vehículo. Sin --gear se toma la marcha de la queja. Se nombran los órdenes que un registro de --turns vueltas de rueda no puede distinguir; --turns es lo que cabe en diez segundos si no se da.\nSalida 0: calculado. 1: faltan el neumático o la relación del eje y no se puede responder nada. 2: entrada o uso incorrectos.",
    report:
      "La terminación del archivo de salida, .pdf o .html, dice qué se escribe.\nSalida 0: escrito. 1: no se pudo responder nada. 2: entrada o uso incorrectos.",
    completion: "El completado es para bash.",
  },
  converting,
  listening,
  serving,
  args: { file: "Caso; - lee la entrada estándar", newFile: "Caso que se escribe", typed: "Palabras escritas hasta ahora" },
  flags: {
    layout: "Disposición de la línea de transmisión",
    title: "Título del caso",
    force: "Sobrescribir el archivo si ya existe",
    stage: "Solo mediciones de esta etapa",
    gauging: "Medición por su número en el archivo, desde 0",
    accept: "Anular un hallazgo de parada y anotarlo (repetible)",
    strict: "Salir con 1 si se pasa un límite o hay una parada abierta",
    json: "Imprimir el resultado en JSON y nada más",
    seed: "Semilla de los sorteos",
    draws: "Número de sorteos detrás de los intervalos",
    units: "Unidades de longitudes y velocidades impresas; el JSON sigue en métricas",
    lang: "Idioma de los textos",
    output: "Archivo que se escribe, terminado en .pdf o .html",
    paper: "Tamaño de papel",
    change: "Cambio que se prueba, como cuna=2deg (repetible)",
    maxChanges: "Cambios a la vez, como mucho",
    keep: "Elemento, clase o axle que no se toca (repetible)",
    show: "Plan cuyos pasos se imprimen, por su número",
    choose: "Plan que se escribe en el caso, por su número",
    speed: "Velocidad en km/h, o con su unidad: 65mph",
    gear: "Marcha engranada, por su nombre en el caso",
    turns: "Vueltas de rueda que tiene un registro",
    help: "Imprimir esta ayuda y salir",
    helpAll: "Imprimir la ayuda con todo lo oculto y salir",
    version: "Imprimir la versión y salir",
    escape: "Tomar todo lo que sigue como argumentos",
  },
  headers: { usage: "USO", aliases: "ALIAS", commands: "ÓRDENES", flags: "OPCIONES", arguments: "ARGUMENTOS" },
  keywords: { default: "por omisión:", separator: "separador:" },
  usage: {
    unknownCommand: (input, near) => `No existe la orden "${input}"${near === "" ? "; halfturn --help muestra todas" : typed(near)}`,
    unknownFlag: (input, near) => `No existe la opción ${input}${near === "" ? "; --help muestra todas" : typed(near)}`,
    unknownAlias: (input) => `No existe la opción corta -${input}; --help muestra todas`,
    notAllowed: (flag, input, allowed) => `--${flag}: no se conoce "${input}"; escriba ${allowed}`,
    flagWithoutValue: (flag) => `--${flag} necesita un valor: escriba --${flag} VALOR`,
    flagTwice: (flag) => `--${flag} está más de una vez; póngala una sola vez`,
    negatedWithValue: (flag) => `--${flag} no lleva valor; quite lo que sigue al =`,
    argumentMissing: (placeholder) => `falta ${placeholder}; añádalo tras la orden`,
    argumentTooMany: (input, expected) =>
      `"${input}" sobra (se esperan ${expected}); quítelo, o ponga entre comillas un nombre con espacios`,
    badValue: (place, input, why) => `${place}: "${input}" ${why}`,
    wholeNumber: (least, most) => `no es un número entero de ${least} a ${most}; escriba uno`,
    findingCode: (near) => `no es el código de un hallazgo${near === "" ? "; escriba un código como lo imprime analyse" : typed(near)}`,
    keepUnknown: (input, near, allowed) =>
      `--keep: no hay elemento de ajuste ni clase "${input}"${near === "" ? `; escriba ${allowed}` : typed(near)}`,
    noSuchPlan: (flag, number, count) =>
      `--${flag}: no hay plan ${number}; ${count < 2 ? (count === 0 ? "no hay ninguno" : "solo hay uno") : `escriba un número de 1 a ${count}`}`,
    nothingToRecord: (number) => `--choose: el plan ${number} no cambia nada, así que no hay nada que anotar; elija otro o quítelo`,
    chooseNeedsFile: "--choose: la entrada estándar no se puede reescribir; nombre un caso",
    roadSpeed: (least, most) => `no es una velocidad de ${least} a ${most}\u00a0km/h; escriba una como 105 o 65mph`,
    outputKind: "no dice qué se escribe; termine el nombre en .pdf o .html",
  },
  files: {
    noCase: (path) => `${path}: no existe ese archivo; revise el nombre, o haga un caso con "halfturn new"`,
    noRecording: (path) => `${path}: no existe ese archivo; revise el nombre y la carpeta de la grabación`,
    isFolder: (path) => `${path}: es una carpeta; nombre un archivo`,
    noPermission: (path) => `${path}: permiso denegado; cambie los permisos o nombre otro archivo`,
    noFolder: (path) => `${path}: la carpeta no existe; créela antes o nombre otro archivo`,
    exists: (path) => `${path}: ya existe y se dejó como está; nombre otro archivo, o añada --force para sobrescribirlo`,
    cannotRead: (path, why) => `${path}: no se puede leer (${why}); revise el archivo e inténtelo otra vez`,
    cannotWrite: (path, why) => `${path}: no se puede escribir (${why}); nombre otro archivo u otra carpeta`,
    notUtf8: (path) => `${path}: no es texto UTF-8; compruebe que es el caso, o guárdelo como UTF-8`,
    standardInput: "entrada estándar",
  },
  made: {
    created: (path) => `${path} escrito.`,
    createdNext: (path) => `Rellene vehículo, longitudes y lo medido, y después: halfturn analyse ${path}`,
    reportWritten: (path) => `${path} escrito.`,
    accepted: (code, path) => `Aceptado ${code}: anotado en ${path}.`,
    acceptedBefore: (code) => `Aceptado ${code}: ya estaba anotado.`,
    acceptedUnrecorded: (code) => `Aceptado ${code} solo esta vez: la entrada estándar no se puede reescribir.`,
    acceptIdle: (code) => `--accept ${code}: aquí no hay ese hallazgo de parada, así que no se anotó nada.`,
  },
  valid: {
    headline: (path) => `${path}: válido`,
    drivelines: (count, joints) =>
      `${count} ${count === 1 ? "línea de transmisión" : "líneas de transmisión"}, ${joints} ${joints === 1 ? "junta" : "juntas"}`,
    gaugings: (count, readings) =>
      `${count} ${count === 1 ? "medición" : "mediciones"}, ${readings} ${readings === 1 ? "lectura" : "lecturas"}`,
    problems: (count) => `${count} ${count === 1 ? "problema" : "problemas"}`,
    missing: "Todavía falta",
    complete: "No falta nada para un análisis.",
    noVehicle: "vehicle: sin describir; añada al menos su nombre",
    noComplaint: "complaint: sin describir; añada velocidad, marcha y dónde se nota",
    noLengths: (driveline) =>
      `lengthMm: ${driveline} tiene un tramo sin su longitud, de centro a centro de junta; mídala antes de planear una corrección`,
  },
  analysed: {
    heading: (driveline, stage, gauging) => `${driveline}, ${stage} (medición ${gauging})`,
    atSpeed: (speed) => `a ${speed}`,
    nothing: (path) =>
      `${path}: no se puede responder nada, porque no se ha medido ningún árbol; mida los árboles a altura de marcha y añada las lecturas`,
    noStage: (stage, has) =>
      `--stage: el caso no tiene mediciones de la etapa "${stage}"${has === "" ? "; añada una antes" : `; tiene ${has}`}`,
    noGaugingNumber: (number, count) =>
      count === 0
        ? `--gauging: no hay medición ${number}; el caso no tiene ninguna, añada una antes`
        : `--gauging: no hay medición ${number}; escriba un número de 0 a ${count - 1}`,
    stageMismatch: (number, is, wanted) =>
      `--gauging ${number} es de la etapa "${is}", no "${wanted}"; quite --stage o nombre otra medición`,
    withheldHint: (codes) => `Corrija la causa y mida otra vez. Para anularlo bajo su responsabilidad: --accept ${codes}`,
    seedAndDraws: (seed, draws) => `Semilla ${seed}, ${draws} sorteos.`,
    place: (path) => `en ${path}`,
  },
  crash: (what) => `halfturn se detuvo por un fallo propio: ${what}. Comuníquelo junto con el caso.`,
};
