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
  readonly powertrain: string;
  readonly sections: string;
  readonly tube: string;
  readonly slip: string;
  readonly joints: string;
  readonly support: string;
  readonly axle: string;
  readonly windUpDeg: string;
  readonly drive: string;
  readonly coast: string;
  readonly driveline: string;
  readonly runs: string;
  readonly firstJoint: string;
  readonly forwardMm: string;
  readonly leftMm: string;
  readonly upMm: string;
  readonly slipShare: string;
  readonly accessories: string;
  readonly centring: string;
  readonly crossesApartMm: string;
  readonly ballFromCrossMm: string;
  readonly ballFixedTo: string;
  readonly padInclinationDeg: string;
  readonly suspension: string;
  readonly pinionPitchDegPerMm: string;
  readonly fixedEyeForwardMm: string;
  readonly fixedEyeUpMm: string;
  readonly shackleEyeForwardMm: string;
  readonly frameForwardMm: string;
  readonly frameUpMm: string;
  readonly axleForwardMm: string;
  readonly axleUpMm: string;
  readonly upper: string;
  readonly states: string;
  readonly axleTravelMm: string;
  readonly pinionPitchDeg: string;
  readonly limits: string;
  readonly jointAccelerationRadS2: string;
  readonly crossMaximumDeg: string;
  readonly crossMinimumDeg: string;
  readonly doubleCrossMaximumDeg: string;
  readonly doubleCrossMinimumDeg: string;
  readonly ballMaximumDeg: string;
  readonly ballMinimumDeg: string;
  readonly flexibleMaximumDeg: string;
  readonly flexibleMinimumDeg: string;
  readonly equivalentMaximumDeg: string;
  readonly drivenAccelerationWarnRadS2: string;
  readonly drivenAccelerationOverRadS2: string;
  readonly inertiaDriveRadS2: string;
  readonly inertiaCoastRadS2: string;
  readonly benchMetDeg: string;
  readonly benchAcceptedDeg: string;
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
    powertrain: "Engine and transmission mounts",
    sections: "Sections",
    tube: "Tube",
    slip: "Slip spline",
    joints: "Joints",
    support: "Support bearing",
    axle: "Axle",
    windUpDeg: "Wind-up under torque",
    drive: "Driving",
    coast: "Coasting",
    driveline: "Driveline",
    runs: "Runs",
    firstJoint: "First joint",
    forwardMm: "Forward of it",
    leftMm: "To the vehicle's left of it",
    upMm: "Above it",
    slipShare: "Most slip of converter or clutch",
    accessories: "Accessories",
    centring: "Centring device",
    crossesApartMm: "Crosses apart, centre to centre",
    ballFromCrossMm: "Ball to the cross of the yoke it is fixed to",
    ballFixedTo: "The ball is fixed",
    padInclinationDeg: "Lean of the spring pad",
    suspension: "Suspension",
    pinionPitchDegPerMm: "Pinion turns with the body's height",
    fixedEyeForwardMm: "Fixed eye, forward of the axle centre",
    fixedEyeUpMm: "Fixed eye, above the axle centre",
    shackleEyeForwardMm: "Eye at the shackle, forward of the axle centre",
    frameForwardMm: "frame end, forward of the axle centre",
    frameUpMm: "frame end, above the axle centre",
    axleForwardMm: "axle end, forward of the axle centre",
    axleUpMm: "axle end, above the axle centre",
    upper: "Upper link",
    states: "Loads and ride heights",
    axleTravelMm: "Body against as gauged",
    pinionPitchDeg: "Pinion nose against as gauged",
    limits: "Limits",
    jointAccelerationRadS2: "Angular acceleration of one joint",
    crossMaximumDeg: "Cross joint, largest angle",
    crossMinimumDeg: "Cross joint, least angle",
    doubleCrossMaximumDeg: "Double cross joint, largest angle",
    doubleCrossMinimumDeg: "Double cross joint, least angle",
    ballMaximumDeg: "Ball-type joint, largest angle",
    ballMinimumDeg: "Ball-type joint, least angle",
    flexibleMaximumDeg: "Flexible coupling, largest angle",
    flexibleMinimumDeg: "Flexible coupling, least angle",
    equivalentMaximumDeg: "Equivalent angle",
    drivenAccelerationWarnRadS2: "Driven end, from here on worth a look",
    drivenAccelerationOverRadS2: "Driven end, at most",
    inertiaDriveRadS2: "Sections, on drive",
    inertiaCoastRadS2: "Sections, on coast",
    benchMetDeg: "Bench rule, aim",
    benchAcceptedDeg: "Bench rule, accepted",
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
    powertrain: "Soportes de motor y caja",
    sections: "Tramos",
    tube: "Tubo",
    slip: "Estriado deslizante",
    joints: "Juntas",
    support: "Apoyo central",
    axle: "Eje",
    windUpDeg: "Giro del eje con par",
    drive: "Con tracción",
    coast: "En retención",
    driveline: "Línea de transmisión",
    runs: "Va",
    firstJoint: "Primera junta",
    forwardMm: "Por delante de ella",
    leftMm: "A la izquierda del vehículo",
    upMm: "Por encima de ella",
    slipShare: "Deslizamiento máximo del convertidor o embrague",
    accessories: "Accesorios",
    centring: "Dispositivo de centrado",
    crossesApartMm: "Entre crucetas, de centro a centro",
    ballFromCrossMm: "De la bola a la cruceta de la horquilla que la lleva",
    ballFixedTo: "La bola va fija",
    padInclinationDeg: "Inclinación del asiento de ballesta",
    suspension: "Suspensión",
    pinionPitchDegPerMm: "El piñón gira con la altura de la carrocería",
    fixedEyeForwardMm: "Ojo fijo, por delante del centro del eje",
    fixedEyeUpMm: "Ojo fijo, por encima del centro del eje",
    shackleEyeForwardMm: "Ojo de la gemela, por delante del centro del eje",
    frameForwardMm: "extremo del bastidor, por delante del centro del eje",
    frameUpMm: "extremo del bastidor, por encima del centro del eje",
    axleForwardMm: "extremo del eje, por delante del centro del eje",
    axleUpMm: "extremo del eje, por encima del centro del eje",
    upper: "Brazo superior",
    states: "Cargas y alturas de marcha",
    axleTravelMm: "Carrocería respecto a como se midió",
    pinionPitchDeg: "Morro del piñón respecto a como se midió",
    limits: "Límites",
    jointAccelerationRadS2: "Aceleración angular de una junta",
    crossMaximumDeg: "Junta de cruceta, ángulo máximo",
    crossMinimumDeg: "Junta de cruceta, ángulo mínimo",
    doubleCrossMaximumDeg: "Junta de doble cruceta, ángulo máximo",
    doubleCrossMinimumDeg: "Junta de doble cruceta, ángulo mínimo",
    ballMaximumDeg: "Junta de bolas, ángulo máximo",
    ballMinimumDeg: "Junta de bolas, ángulo mínimo",
    flexibleMaximumDeg: "Acoplamiento flexible, ángulo máximo",
    flexibleMinimumDeg: "Acoplamiento flexible, ángulo mínimo",
    equivalentMaximumDeg: "Ángulo equivalente",
    drivenAccelerationWarnRadS2: "Extremo conducido, desde aquí merece atención",
    drivenAccelerationOverRadS2: "Extremo conducido, como máximo",
    inertiaDriveRadS2: "Tramos, en tracción",
    inertiaCoastRadS2: "Tramos, en retención",
    benchMetDeg: "Regla de banco, objetivo",
    benchAcceptedDeg: "Regla de banco, aceptado",
  },
};

export const isFieldName = (key: string, names: FieldNames): key is keyof FieldNames => Object.hasOwn(names, key);
