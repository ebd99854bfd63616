import type { ByLanguage } from "./use-words.js";

/** What the fields of a case are called, by their key in the file. */
export interface FieldNames {
  readonly title: string;
  readonly label: string;
  readonly notes: string;
  readonly speedKmh: string;
  readonly gear: string;
  readonly load: string;
  readonly feel: string;
  readonly axleRatio: string;
  readonly transferRatio: string;
  readonly gears: string;
  readonly ratio: string;
  readonly size: string;
  readonly rollingCircumferenceMm: string;
  readonly cylinders: string;
  readonly maxShaftSpeedRpm: string;
  readonly pivotForwardMm: string;
  readonly pivotUpMm: string;
  readonly mountForwardMm: string;
  readonly mountUpMm: string;
  readonly lengthMm: string;
  readonly phasingDeg: string;
  readonly phasingMeasured: string;
  readonly outerDiameterMm: string;
  readonly wallMm: string;
  readonly material: string;
  readonly engagedMm: string;
  readonly minimumEngagedMm: string;
  readonly inwardTravelMm: string;
  readonly kind: string;
  readonly statedAngleDeg: string;
  readonly source: string;
  readonly driven: string;
  readonly bearingMounted: string;
  readonly bearingToJointMm: string;
  readonly bearingIs: string;
  readonly centreToJointMm: string;
  readonly jointAboveCentreMm: string;
  readonly springPosition: string;
  readonly steered: string;
  readonly casterDeg: string;
  readonly casterMinimumDeg: string;
  readonly casterMaximumDeg: string;
  readonly windUpDrive: string;
  readonly windUpCoast: string;
  readonly deg: string;
  readonly lower: string;
  readonly topLeans: string;
  readonly side: string;
  readonly readings: string;
  readonly headings: string;
  readonly gauging: string;
  readonly adjusters: string;
  readonly corrections: string;
  readonly vehicle: string;
  readonly complaint: string;
  readonly tyre: string;
  readonly drivelines: string;
  readonly labour: string;
  readonly state: string;
}

export const fieldNames: ByLanguage<FieldNames> = {
  en: {
    title: "Title",
    label: "Name",
    notes: "Notes",
    speedKmh: "Road speed",
    gear: "Gear",
    load: "Load",
    feel: "Where it is felt",
    axleRatio: "Axle ratio",
    transferRatio: "Transfer ratio",
    gears: "Gears",
    ratio: "Ratio",
    size: "Tyre size",
    rollingCircumferenceMm: "Rolling circumference",
    cylinders: "Cylinders",
    maxShaftSpeedRpm: "Highest shaft speed in use",
    pivotForwardMm: "Pivot, forward of the first joint",
    pivotUpMm: "Pivot, above the first joint",
    mountForwardMm: "Rear mount, forward of the first joint",
    mountUpMm: "Rear mount, above the first joint",
    lengthMm: "Length, joint centre to joint centre",
    phasingDeg: "Phasing of its yokes",
    phasingMeasured: "Phasing measured",
    outerDiameterMm: "Outer diameter",
    wallMm: "Wall",
    material: "Material",
    engagedMm: "Spline engaged",
    minimumEngagedMm: "Least engagement allowed",
    inwardTravelMm: "Travel left inward",
    kind: "Kind",
    statedAngleDeg: "Largest angle that its maker states",
    source: "What drives it",
    driven: "What it drives",
    bearingMounted: "Support bearing",
    bearingToJointMm: "Bearing to joint centre",
    bearingIs: "The bearing is",
    centreToJointMm: "Axle centre to pinion joint",
    jointAboveCentreMm: "Pinion joint above the axle centre",
    springPosition: "Springs",
    steered: "Steered axle",
    casterDeg: "Caster",
    casterMinimumDeg: "Least caster allowed",
    casterMaximumDeg: "Most caster allowed",
    windUpDrive: "Wind-up, driving",
    windUpCoast: "Wind-up, coasting",
    deg: "Display",
    lower: "Lower end",
    topLeans: "Top leans toward",
    side: "Read from",
    readings: "Readings",
    headings: "Headings",
    gauging: "Gauging",
    adjusters: "Adjusters",
    corrections: "Corrections",
    vehicle: "Vehicle",
    complaint: "Complaint",
    tyre: "Tyre",
    drivelines: "Drivelines",
    labour: "Labour",
    state: "State",
  },
  es: {
    title: "Título",
    label: "Nombre",
    notes: "Notas",
    speedKmh: "Velocidad",
    gear: "Marcha",
    load: "Carga",
    feel: "Dónde se nota",
    axleRatio: "Relación del eje",
    transferRatio: "Relación de la caja transfer",
    gears: "Marchas",
    ratio: "Relación",
    size: "Medida del neumático",
    rollingCircumferenceMm: "Circunferencia de rodadura",
    cylinders: "Cilindros",
    maxShaftSpeedRpm: "Velocidad máxima del árbol en uso",
    pivotForwardMm: "Pivote, por delante de la primera junta",
    pivotUpMm: "Pivote, por encima de la primera junta",
    mountForwardMm: "Soporte trasero, por delante de la primera junta",
    mountUpMm: "Soporte trasero, por encima de la primera junta",
    lengthMm: "Longitud, de centro a centro de junta",
    phasingDeg: "Fase de sus horquillas",
    phasingMeasured: "Fase medida",
    outerDiameterMm: "Diámetro exterior",
    wallMm: "Pared",
    material: "Material",
    engagedMm: "Estriado metido",
    minimumEngagedMm: "Mínimo metido permitido",
    inwardTravelMm: "Recorrido libre hacia dentro",
    kind: "Tipo",
    statedAngleDeg: "Mayor ángulo que indica su fabricante",
    source: "Qué lo mueve",
    driven: "Qué mueve",
    bearingMounted: "Apoyo central",
    bearingToJointMm: "Del rodamiento al centro de la junta",
    bearingIs: "El rodamiento está",
    centreToJointMm: "Del centro del eje a la junta del piñón",
    jointAboveCentreMm: "Junta del piñón sobre el centro del eje",
    springPosition: "Ballestas",
    steered: "Eje directriz",
    casterDeg: "Avance",
    casterMinimumDeg: "Avance mínimo permitido",
    casterMaximumDeg: "Avance máximo permitido",
    windUpDrive: "Giro del eje, con tracción",
    windUpCoast: "Giro del eje, en retención",
    deg: "Pantalla",
    lower: "Extremo más bajo",
    topLeans: "La parte alta se inclina hacia",
    side: "Leído desde",
    readings: "Lecturas",
    headings: "Rumbos",
    gauging: "Medición",
    adjusters: "Ajustes",
    corrections: "Correcciones",
    vehicle: "Vehículo",
    complaint: "Queja",
    tyre: "Neumático",
    drivelines: "Líneas motrices",
    labour: "Mano de obra",
    state: "Estado",
  },
};

export const isFieldName = (key: string, names: FieldNames): key is keyof FieldNames => Object.hasOwn(names, key);
