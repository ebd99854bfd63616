import type { ByLanguage } from "../../../words/use-words.js";

/** Where a vibration is felt, as the case file spells it. */
export const FEELS = ["floor", "seat", "steering-wheel", "pedals", "mirror", "noise"] as const;
export type Feel = (typeof FEELS)[number];
export const LOADS = ["drive", "cruise", "coast"] as const;
export type Load = (typeof LOADS)[number];

interface DescribeWords {
  readonly complaint: string;
  readonly titleField: string;
  readonly titleHelp: string;
  readonly vehicleField: string;
  readonly vehicleHelp: string;
  readonly from: string;
  readonly to: string;
  readonly bandHelp: string;
  readonly feels: { readonly [F in Feel]: string };
  readonly loads: { readonly [L in Load]: string };
  readonly notKnown: string;
  readonly notesHelp: string;
  readonly numbers: string;
  readonly numbersHelp: string;
  readonly maxSpeedHelp: string;
  readonly tyreHelp: string;
  readonly circumferenceHelp: string;
  readonly addGear: string;
  readonly removeGear: (label: string) => string;
  readonly gearName: string;
  readonly nameMissing: (before: string) => string;
  readonly nameTaken: (name: string) => string;
  readonly powertrain: string;
  readonly powertrainHelp: string;
  readonly inLine: string;
  readonly quarterTurn: string;
  readonly otherPhasing: string;
  readonly phasingHelp: string;
  readonly phasingAngle: string;
  readonly phasingAngleHelp: string;
  readonly measured: string;
  readonly measuredYes: string;
  readonly measuredNo: string;
  readonly tubeAndSlip: string;
  readonly slipHelp: string;
  readonly parts: string;
  readonly jointLabel: (id: string) => string;
  readonly sectionLabel: string;
  readonly support: string;
  readonly withoutSupport: string;
  readonly withSupport: string;
  readonly below: string;
  readonly above: string;
  readonly sourceSide: string;
  readonly drivenSide: string;
  readonly axle: string;
  readonly steel: string;
  readonly aluminium: string;
  readonly aboveAxle: string;
  readonly belowAxle: string;
  readonly steeredYes: string;
  readonly steeredNo: string;
  readonly windUpHelp: string;
  readonly runs: { readonly rearward: string; readonly forward: string };
  readonly lengthHelp: string;
}

export const describeWords: ByLanguage<DescribeWords> = {
  en: {
    complaint: "The complaint",
    titleField: "In one line",
    titleHelp: "As the customer says it: rumbles at 70 since the springs were raised.",
    vehicleField: "Vehicle",
    vehicleHelp: "Fleet number or plate, and what it is.",
    from: "From",
    to: "To",
    bandHelp: "The road speeds between which it is there.",
    feels: { floor: "Floor", seat: "Seat", "steering-wheel": "Steering wheel", pedals: "Pedals", mirror: "Mirror", noise: "As a noise" },
    loads: { drive: "Pulling", cruise: "Steady", coast: "Coasting" },
    notKnown: "Not known",
    notesHelp: "Since when, after what work, with what load.",
    numbers: "Numbers of the vehicle",
    numbersHelp: "They tell which rotating part an order belongs to, and how fast the shaft turns.",
    maxSpeedHelp: "Limits of joint angles are worked out for this speed.",
    tyreHelp: "As on the sidewall: 265/70R17.",
    circumferenceHelp: "Measured on the road it counts instead of the size.",
    addGear: "Add a gear",
    removeGear: (label) => `Take out gear ${label}`,
    gearName: "Gear",
    nameMissing: (before) => `It needs a name. Until it has one it is still called ${before}.`,
    nameTaken: (name) => `Another one is called ${name} already: choose another name.`,
    powertrain: "Engine and transmission mounts",
    powertrainHelp: "Needed only to foretell what a spacer at the rear mount does. Distances from the centre of the first joint.",
    inLine: "In line",
    quarterTurn: "A quarter turn apart",
    otherPhasing: "Another angle",
    phasingHelp: "Look along the shaft: how the yoke at its driven end stands to the one at its source end.",
    phasingAngle: "Driven-end yoke, clockwise seen from the source end",
    phasingAngleHelp: "A level on each yoke's ears in turn, the shaft not moved: the difference. 0 to 180.",
    measured: "How do you know?",
    measuredYes: "Looked at on the shaft",
    measuredNo: "Taken as usual",
    tubeAndSlip: "Tube and slip spline",
    slipHelp: "With the vehicle at ride height. A correction that pulls it out too far is never proposed.",
    parts: "Joints",
    jointLabel: (id) => `Joint ${id}`,
    sectionLabel: "Name of this section",
    support: "Support bearing",
    withoutSupport: "None here",
    withSupport: "Bearing at this joint",
    below: "Under its crossmember",
    above: "On its crossmember",
    sourceSide: "on the source side of the joint",
    drivenSide: "on the driven side of the joint",
    axle: "Axle",
    steel: "Steel",
    aluminium: "Aluminium",
    aboveAxle: "Above the axle",
    belowAxle: "Under the axle",
    steeredYes: "Steered",
    steeredNo: "Not steered",
    windUpHelp: "How far the pinion nose turns under torque.",
    runs: { rearward: "to the rear axle", forward: "to the front axle" },
    lengthHelp: "With a tape, from the centre of one joint cross to the next.",
  },
  es: {
    complaint: "La queja",
    titleField: "En una línea",
    titleHelp: "Como lo dice el cliente: retumba a 70 desde que se subió la suspensión.",
    vehicleField: "Vehículo",
    vehicleHelp: "Número de flota o matrícula, y qué es.",
    from: "Desde",
    to: "Hasta",
    bandHelp: "Las velocidades entre las que aparece.",
    feels: { floor: "Piso", seat: "Asiento", "steering-wheel": "Volante", pedals: "Pedales", mirror: "Espejo", noise: "Como ruido" },
    loads: { drive: "Tirando", cruise: "Constante", coast: "En retención" },
    notKnown: "No se sabe",
    notesHelp: "Desde cuándo, tras qué trabajo, con qué carga.",
    numbers: "Números del vehículo",
    numbersHelp: "Dicen a qué parte giratoria pertenece un orden y a qué velocidad gira el árbol.",
    maxSpeedHelp: "Los límites de los ángulos de junta se calculan para esta velocidad.",
    tyreHelp: "Como en el flanco: 265/70R17.",
    circumferenceHelp: "Medida en marcha, cuenta en lugar de la medida del flanco.",
    addGear: "Añadir una marcha",
    removeGear: (label) => `Quitar la marcha ${label}`,
    gearName: "Marcha",
    nameMissing: (before) => `Necesita un nombre. Hasta entonces se sigue llamando ${before}.`,
    nameTaken: (name) => `Ya hay otra que se llama ${name}: elija otro nombre.`,
    powertrain: "Soportes de motor y caja",
    powertrainHelp:
      "Solo hace falta para prever qué hace un suplemento en el soporte trasero. Distancias desde el centro de la primera junta.",
    inLine: "En línea",
    quarterTurn: "A un cuarto de vuelta",
    otherPhasing: "Otro ángulo",
    phasingHelp: "Mire a lo largo del árbol: cómo está la horquilla del extremo conducido respecto a la del extremo de la fuente.",
    phasingAngle: "Horquilla del extremo conducido, en sentido horario vista desde la fuente",
    phasingAngleHelp: "Un nivel en las orejas de cada horquilla, sin mover el árbol: la diferencia. De 0 a 180.",
    measured: "¿Cómo lo sabe?",
    measuredYes: "Visto en el árbol",
    measuredNo: "Como es habitual",
    tubeAndSlip: "Tubo y estriado deslizante",
    slipHelp: "Con el vehículo a altura de marcha. Nunca se propone una corrección que lo saque demasiado.",
    parts: "Juntas",
    jointLabel: (id) => `Junta ${id}`,
    sectionLabel: "Nombre de este tramo",
    support: "Apoyo central",
    withoutSupport: "No hay aquí",
    withSupport: "Rodamiento en esta junta",
    below: "Bajo su travesaño",
    above: "Sobre su travesaño",
    sourceSide: "en el lado de la fuente de la junta",
    drivenSide: "en el lado conducido de la junta",
    axle: "Eje",
    steel: "Acero",
    aluminium: "Aluminio",
    aboveAxle: "Sobre el eje",
    belowAxle: "Bajo el eje",
    steeredYes: "Directriz",
    steeredNo: "No directriz",
    windUpHelp: "Cuánto gira el morro del piñón con el par.",
    runs: { rearward: "al eje trasero", forward: "al eje delantero" },
    lengthHelp: "Con cinta, del centro de una cruceta al centro de la siguiente.",
  },
};
