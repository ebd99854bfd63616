import type { ByLanguage } from "../../../words/use-words.js";

/** Where a number comes from and how it is measured, by its key in the file. */
export interface FieldHelp {
  readonly axleRatio: string;
  readonly transferRatio: string;
  readonly cylinders: string;
  readonly slipShare: string;
  readonly gearRatio: string;
  readonly accessoryRatio: string;
  readonly pivotForwardMm: string;
  readonly pivotUpMm: string;
  readonly mountForwardMm: string;
  readonly mountUpMm: string;
  readonly outerDiameterMm: string;
  readonly wallMm: string;
  readonly engagedMm: string;
  readonly minimumEngagedMm: string;
  readonly inwardTravelMm: string;
  readonly statedAngleDeg: string;
  readonly bearingToJointMm: string;
  readonly crossesApartMm: string;
  readonly ballFromCrossMm: string;
  readonly forwardMm: string;
  readonly leftMm: string;
  readonly upMm: string;
  readonly centreToJointMm: string;
  readonly jointAboveCentreMm: string;
  readonly padInclinationDeg: string;
  readonly casterDeg: string;
  readonly casterMinimumDeg: string;
  readonly casterMaximumDeg: string;
  readonly windUpDrive: string;
  readonly windUpCoast: string;
  readonly pinionPitchDegPerMm: string;
  readonly fixedEyeForwardMm: string;
  readonly fixedEyeUpMm: string;
  readonly shackleEyeForwardMm: string;
  readonly axleTravelMm: string;
  readonly pinionPitchDeg: string;
}

export const fieldHelp: ByLanguage<FieldHelp> = {
  en: {
    axleRatio: "On the axle's tag or in the papers: turns of the shaft for one of the wheel.",
    transferRatio: "In the range driven, mostly 1. Empty where there is no transfer case.",
    cylinders: "Each fires once in two turns of the engine.",
    slipShare: "How far the engine may run ahead at most. Empty where nothing slips: a manual gearbox, a locked converter.",
    gearRatio: "From the papers: turns of the engine for one of the output.",
    accessoryRatio: "Turns for one of the engine: outer diameter of the crankshaft pulley over that of its own.",
    pivotForwardMm: "On the line through the front mounts, with a tape along the vehicle. Minus: behind the joint.",
    pivotUpMm: "With a tape or a level. Minus: below the joint.",
    mountForwardMm: "Centre of the rear mount, along the vehicle. Minus: behind the joint.",
    mountUpMm: "Where the spacer would go. Minus: below the joint.",
    outerDiameterMm: "With a calliper on the bare tube, away from welds and balance weights.",
    wallMm: "From the shaft maker's sheet, or at an open end of the tube.",
    engagedMm: "Length of the splines less what shows of them.",
    minimumEngagedMm: "From the shaft maker's sheet.",
    inwardTravelMm: "How far the shaft can still be pushed together.",
    statedAngleDeg: "From the joint maker's sheet, for the speed at which it runs.",
    bearingToJointMm: "Along the shaft, centre of the bearing to centre of the joint's cross.",
    crossesApartMm: "With a calliper, along the straightened joint.",
    ballFromCrossMm: "Along the straightened joint. Half the distance of the crosses where it is built alike on both sides.",
    forwardMm: "With a tape along the vehicle, from the first joint of the first driveline. Minus: behind it.",
    leftMm: "Across the vehicle. Minus: to its right.",
    upMm: "With a level. Minus: below it.",
    centreToJointMm: "Along the pinion, from the middle of the axle tube to the middle of the last joint.",
    jointAboveCentreMm: "Square to the pinion. Minus: below it.",
    padInclinationDeg: "With the gauge on the spring pad, along the vehicle. Empty where it lies level.",
    casterDeg: "From the alignment bench, at ride height.",
    casterMinimumDeg: "From the vehicle maker's sheet.",
    casterMaximumDeg: "From the vehicle maker's sheet.",
    windUpDrive: "Pinion read under torque against the brake, less the same at rest: by the maker's procedure only.",
    windUpCoast: "On overrun the nose turns the other way; half of driving where nobody read it is common practice, no source.",
    pinionPitchDegPerMm: "Raise the body by a known height, read the pinion before and after, divide.",
    fixedEyeForwardMm: "The eye without a shackle: middle of its bolt, along the vehicle. Minus: behind the axle.",
    fixedEyeUpMm: "Middle of its bolt. Minus: below the axle centre.",
    shackleEyeForwardMm: "Middle of its bolt. Minus: behind the axle. Empty: both halves of the spring are taken as equal.",
    axleTravelMm: "Wheel centre to the arch above it, laden or raised, less the same as it was gauged.",
    pinionPitchDeg: "Read in that state. Empty: worked out from the springs or links above, if they are known.",
  },
  es: {
    axleRatio: "En la placa del eje o en los papeles: vueltas del árbol por una de la rueda.",
    transferRatio: "En la gama en que se circula, casi siempre 1. Vacío si no hay caja transfer.",
    cylinders: "Cada uno enciende una vez cada dos vueltas del motor.",
    slipShare: "Cuánto puede adelantarse el motor como máximo. Vacío si nada desliza: caja manual, convertidor bloqueado.",
    gearRatio: "De los papeles: vueltas del motor por una de la salida.",
    accessoryRatio: "Vueltas por una del motor: diámetro exterior de la polea del cigüeñal entre el de la suya.",
    pivotForwardMm: "En la línea que une los soportes delanteros, con cinta a lo largo del vehículo. Menos: por detrás de la junta.",
    pivotUpMm: "Con cinta o nivel. Menos: por debajo de la junta.",
    mountForwardMm: "Centro del soporte trasero, a lo largo del vehículo. Menos: por detrás de la junta.",
    mountUpMm: "Donde iría el suplemento. Menos: por debajo de la junta.",
    outerDiameterMm: "Con calibre sobre el tubo limpio, lejos de soldaduras y contrapesos.",
    wallMm: "De la hoja del fabricante del árbol, o en un extremo abierto del tubo.",
    engagedMm: "Longitud del estriado menos lo que se ve de él.",
    minimumEngagedMm: "De la hoja del fabricante del árbol.",
    inwardTravelMm: "Cuánto se puede meter aún el árbol.",
    statedAngleDeg: "De la hoja del fabricante de la junta, para la velocidad a la que gira.",
    bearingToJointMm: "A lo largo del árbol, del centro del rodamiento al centro de la cruceta.",
    crossesApartMm: "Con calibre, a lo largo de la junta puesta recta.",
    ballFromCrossMm: "A lo largo de la junta recta. La mitad de la distancia entre crucetas si es igual por ambos lados.",
    forwardMm: "Con cinta a lo largo del vehículo, desde la primera junta de la primera línea de transmisión. Menos: por detrás.",
    leftMm: "A lo ancho del vehículo. Menos: a su derecha.",
    upMm: "Con nivel. Menos: por debajo.",
    centreToJointMm: "A lo largo del piñón, del centro del tubo del eje al centro de la última junta.",
    jointAboveCentreMm: "En escuadra con el piñón. Menos: por debajo.",
    padInclinationDeg: "Con el inclinómetro sobre el asiento, a lo largo del vehículo. Vacío si está a nivel.",
    casterDeg: "De la bancada de alineación, a altura de marcha.",
    casterMinimumDeg: "De la hoja del fabricante del vehículo.",
    casterMaximumDeg: "De la hoja del fabricante del vehículo.",
    windUpDrive: "El piñón leído con par contra el freno, menos lo mismo en reposo: solo según el procedimiento del fabricante.",
    windUpCoast: "En retención el morro gira al revés; si nadie lo leyó, la mitad que con tracción es costumbre, sin fuente.",
    pinionPitchDegPerMm: "Suba la carrocería una altura conocida, lea el piñón antes y después, y divida.",
    fixedEyeForwardMm: "El ojo sin gemela: centro de su perno, a lo largo del vehículo. Menos: por detrás del eje.",
    fixedEyeUpMm: "Centro de su perno. Menos: por debajo del centro del eje.",
    shackleEyeForwardMm: "Centro de su perno. Menos: por detrás del eje. Vacío: se toman iguales las dos mitades de la ballesta.",
    axleTravelMm: "Del centro de la rueda al arco de encima, cargado o subido, menos lo mismo como se midió.",
    pinionPitchDeg: "Leído en ese estado. Vacío: se calcula con las ballestas o brazos de arriba, si se conocen.",
  },
};
