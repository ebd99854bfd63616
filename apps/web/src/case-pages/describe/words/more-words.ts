import type { ByLanguage } from "../../../words/use-words.js";

/** What only some cases need: what the engine drives, other loads and heights, limits of one's own, notes. */
interface MoreWords {
  readonly title: string;
  readonly gears: string;
  readonly accessories: string;
  readonly accessoriesHelp: string;
  readonly addAccessory: string;
  readonly accessoryName: string;
  readonly removeAccessory: (name: string) => string;
  readonly newAccessory: (number: number) => string;
  readonly statesHelp: string;
  readonly asGauged: string;
  readonly addState: string;
  readonly stateName: string;
  readonly newState: (number: number) => string;
  readonly removeState: (name: string) => string;
  readonly forDriveline: string;
  readonly allDrivelines: string;
  readonly bodyHigher: string;
  readonly bodyLower: string;
  readonly noseUp: string;
  readonly noseDown: string;
  readonly torque: string;
  readonly loads: { readonly none: string; readonly "drive-torque": string; readonly "coast-torque": string };
  readonly limitsHelp: string;
  readonly limitsSource: string;
  readonly limitsSourceHelp: string;
  readonly builtIn: (value: string) => string;
  readonly otherJoints: string;
  readonly accelerations: string;
  readonly benchRule: string;
  readonly notes: string;
  readonly notesHelp: string;
}

export const moreWords: ByLanguage<MoreWords> = {
  en: {
    title: "More, where it is needed",
    gears: "Gears and slip",
    accessories: "What the engine drives",
    accessoriesHelp: "A fan, a pump or a generator can shake as well: with its ratio its order is known.",
    addAccessory: "Add an accessory",
    accessoryName: "What it is",
    removeAccessory: (name) => `Take out ${name}`,
    newAccessory: (number) => `Accessory ${number}`,
    statesHelp: "A correction has to hold in all of these. Where the list is empty, it has to hold as the vehicle was gauged.",
    asGauged: "As gauged",
    addState: "Add a load or ride height",
    stateName: "What it is called",
    newState: (number) => `State ${number}`,
    removeState: (name) => `Take out ${name}`,
    forDriveline: "Holds for",
    allDrivelines: "Every driveline",
    bodyHigher: "Body higher",
    bodyLower: "Body lower",
    noseUp: "Nose up",
    noseDown: "Nose down",
    torque: "Torque",
    loads: { none: "None", "drive-torque": "Pulling", "coast-torque": "Coasting" },
    limitsHelp: "The built-in limits hold where a field is empty. A maker's sheet or a rule of the shop goes before them.",
    limitsSource: "Where these limits come from",
    limitsSourceHelp: "It stands beside every verdict that rests on them: the maker's sheet and its page.",
    builtIn: (value) => `Built in: ${value}.`,
    otherJoints: "Other kinds of joint",
    accelerations: "Angular accelerations",
    benchRule: "Bench rule",
    notes: "Notes on the case",
    notesHelp: "Anything else that the next one has to know.",
  },
  es: {
    title: "Más, donde haga falta",
    gears: "Marchas y deslizamiento",
    accessories: "Lo que mueve el motor",
    accessoriesHelp: "Un ventilador, una bomba o un generador también pueden vibrar: con su relación se conoce su orden.",
    addAccessory: "Añadir un accesorio",
    accessoryName: "Qué es",
    removeAccessory: (name) => `Quitar ${name}`,
    newAccessory: (number) => `Accesorio ${number}`,
    statesHelp: "Una corrección tiene que valer en todos estos. Si la lista está vacía, tiene que valer como se midió el vehículo.",
    asGauged: "Como se midió",
    addState: "Añadir una carga o altura",
    stateName: "Cómo se llama",
    newState: (number) => `Estado ${number}`,
    removeState: (name) => `Quitar ${name}`,
    forDriveline: "Vale para",
    allDrivelines: "Todas las líneas motrices",
    bodyHigher: "Carrocería más alta",
    bodyLower: "Carrocería más baja",
    noseUp: "Morro arriba",
    noseDown: "Morro abajo",
    torque: "Par",
    loads: { none: "Ninguno", "drive-torque": "Tirando", "coast-torque": "En retención" },
    limitsHelp: "Donde un campo está vacío valen los límites incorporados. La hoja de un fabricante o una regla del taller va antes.",
    limitsSource: "De dónde salen estos límites",
    limitsSourceHelp: "Figura junto a cada veredicto que se apoya en ellos: la hoja del fabricante y su página.",
    builtIn: (value) => `Incorporado: ${value}.`,
    otherJoints: "Otros tipos de junta",
    accelerations: "Aceleraciones angulares",
    benchRule: "Regla de banco",
    notes: "Notas del caso",
    notesHelp: "Cualquier otra cosa que deba saber el siguiente.",
  },
};
