import type { ByLanguage } from "../../../words/use-words.js";

/** What guides an axle, and where a second driveline begins. */
interface AxleWords {
  readonly axleLabel: string;
  readonly frontLower: string;
  readonly rearLower: string;
  readonly guided: string;
  readonly guidedHelp: string;
  readonly guides: { readonly leaf: string; readonly links: string; readonly rate: string };
  readonly lowerLink: string;
  readonly upperLink: string;
  readonly linksHelp: string;
  readonly noseUpRaised: string;
  readonly noseDownRaised: string;
  readonly caster: string;
  readonly torque: string;
  readonly firstJoint: string;
  readonly firstJointHelp: (first: string) => string;
  readonly names: string;
  readonly drivelineLabel: string;
  readonly centringHelp: string;
  readonly withCentring: string;
  readonly withoutCentring: string;
}

export const axleWords: ByLanguage<AxleWords> = {
  en: {
    axleLabel: "Name of the axle",
    frontLower: "Front edge lower",
    rearLower: "Rear edge lower",
    guided: "What guides the axle",
    guidedHelp: "Only needed to foretell what a ride height or another load does. From the axle centre, as it was gauged.",
    guides: { leaf: "Leaf springs", links: "Links", rate: "Only the turn is known" },
    lowerLink: "Lower link",
    upperLink: "Upper link",
    linksHelp: "To the middle of each bolt, with a tape along the vehicle and a level. Minus: behind or below the axle centre.",
    noseUpRaised: "nose up as the body rises",
    noseDownRaised: "nose down as the body rises",
    caster: "Steering: caster",
    torque: "Under torque",
    firstJoint: "Where its first joint lies",
    firstJointHelp: (first) =>
      `Needed only to foretell what a spacer at the rear mount does here. Measured from the first joint of: ${first}.`,
    names: "Names",
    drivelineLabel: "Name of this driveline",
    centringHelp: "Only where it is not built alike on both sides, or a precise answer is wanted at large angles.",
    withCentring: "Measured",
    withoutCentring: "Taken as alike on both sides",
  },
  es: {
    axleLabel: "Nombre del eje",
    frontLower: "Borde delantero más bajo",
    rearLower: "Borde trasero más bajo",
    guided: "Qué guía el eje",
    guidedHelp: "Solo hace falta para prever qué hace otra altura u otra carga. Desde el centro del eje, como se midió.",
    guides: { leaf: "Ballestas", links: "Brazos", rate: "Solo se conoce el giro" },
    lowerLink: "Brazo inferior",
    upperLink: "Brazo superior",
    linksHelp: "Al centro de cada perno, con cinta a lo largo del vehículo y nivel. Menos: por detrás o por debajo del centro del eje.",
    noseUpRaised: "morro arriba al subir la carrocería",
    noseDownRaised: "morro abajo al subir la carrocería",
    caster: "Dirección: avance",
    torque: "Con par",
    firstJoint: "Dónde está su primera junta",
    firstJointHelp: (first) =>
      `Solo hace falta para prever qué hace aquí un suplemento en el soporte trasero. Medido desde la primera junta de: ${first}.`,
    names: "Nombres",
    drivelineLabel: "Nombre de esta línea de transmisión",
    centringHelp: "Solo si no es igual por ambos lados, o si se quiere una respuesta precisa con ángulos grandes.",
    withCentring: "Medido",
    withoutCentring: "Se toma igual por ambos lados",
  },
};
