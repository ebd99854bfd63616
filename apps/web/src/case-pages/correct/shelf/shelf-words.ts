import type { ByLanguage } from "../../../words/use-words.js";
import type { AdjusterKind } from "./new-adjuster.js";

export interface ShelfWords {
  readonly title: string;
  readonly help: string;
  readonly usual: string;
  readonly usualHelp: string;
  readonly add: string;
  readonly kinds: Readonly<Record<AdjusterKind, string>>;
  /** What a plus means for each kind. */
  readonly plus: Readonly<Record<AdjusterKind, string>>;
  readonly label: string;
  readonly driveline: string;
  readonly joint: string;
  readonly section: string;
  readonly link: string;
  readonly lower: string;
  readonly upper: string;
  readonly stock: string;
  readonly asSizes: string;
  readonly asRange: string;
  readonly sizes: string;
  readonly addSize: string;
  readonly add1: string;
  readonly removeSize: (size: string) => string;
  readonly from: string;
  readonly to: string;
  readonly step: string;
  readonly fitted: string;
  readonly fittedHelp: string;
  readonly labour: string;
  readonly labourHelp: string;
  readonly parts: string;
  readonly padLength: string;
  readonly padHelp: string;
  readonly thinEdge: string;
  readonly splineTeeth: string;
  readonly pitch: string;
  readonly pitchHelp: string;
  readonly remove: string;
}

export const shelfWords: ByLanguage<ShelfWords> = {
  en: {
    title: "Parts on the shelf",
    help: "What you could fit or move on this vehicle, in the sizes you can lay hands on.",
    usual: "Put the usual parts in",
    usualHelp:
      "Nothing on the shelf yet. The usual parts come in common sizes with nothing fitted: put right what differs on this vehicle.",
    add: "Add to the shelf",
    kinds: {
      "axle-wedge": "Axle wedges",
      "support-drop": "Support bearing spacers",
      "support-shift": "Support bearing sideways",
      "mount-spacer": "Powertrain mount spacers",
      "ride-height": "Ride height",
      rephase: "Turn a section on its spline",
      "link-length": "Axle link length",
    },
    plus: {
      "axle-wedge": "plus is pinion nose up",
      "support-drop": "plus is bearing lowered",
      "support-shift": "plus is toward the vehicle's left",
      "mount-spacer": "plus is rear of the powertrain raised",
      "ride-height": "plus is body raised",
      rephase: "",
      "link-length": "plus is link longer",
    },
    label: "What you call it",
    driveline: "Driveline",
    joint: "Bearing at joint",
    section: "Section",
    link: "Link",
    lower: "Lower",
    upper: "Upper",
    stock: "Stock",
    asSizes: "Single sizes",
    asRange: "A range in steps",
    sizes: "Sizes",
    addSize: "Another size",
    add1: "Add",
    removeSize: (size) => `Take ${size} off the list`,
    from: "From",
    to: "To",
    step: "Step",
    fitted: "Fitted as found",
    fittedHelp: "What stood there when the vehicle came in. A spacer can only be taken out as far as one is fitted.",
    labour: "Labour",
    labourHelp: "Hours, or any measure that you keep through the case.",
    parts: "Parts, in the same measure",
    padLength: "Spring pad, length along the vehicle",
    padHelp: "Needed for the thickness of the wedge.",
    thinEdge: "Wedge, thin edge",
    splineTeeth: "Teeth of the spline",
    pitch: "Pinion nose up for each millimetre or inch",
    pitchHelp: "Leave empty where the springs or links are described: it is worked out from them.",
    remove: "Take off the shelf",
  },
  es: {
    title: "Piezas en el estante",
    help: "Lo que podría montar o mover en este vehículo, en las medidas de que dispone.",
    usual: "Poner las piezas habituales",
    usualHelp:
      "Aún no hay nada en el estante. Las piezas habituales vienen en medidas corrientes y sin nada montado: corrija lo que en este vehículo sea distinto.",
    add: "Añadir al estante",
    kinds: {
      "axle-wedge": "Cuñas de eje",
      "support-drop": "Suplementos del soporte intermedio",
      "support-shift": "Soporte intermedio hacia un lado",
      "mount-spacer": "Suplementos del apoyo del grupo motor",
      "ride-height": "Altura de marcha",
      rephase: "Girar un tramo en su estría",
      "link-length": "Longitud de un brazo del eje",
    },
    plus: {
      "axle-wedge": "más es morro del piñón hacia arriba",
      "support-drop": "más es soporte más bajo",
      "support-shift": "más es hacia la izquierda del vehículo",
      "mount-spacer": "más es la parte trasera del grupo motor más alta",
      "ride-height": "más es carrocería más alta",
      rephase: "",
      "link-length": "más es brazo más largo",
    },
    label: "Cómo lo llama",
    driveline: "Línea de transmisión",
    joint: "Soporte en la junta",
    section: "Tramo",
    link: "Brazo",
    lower: "Inferior",
    upper: "Superior",
    stock: "Existencias",
    asSizes: "Medidas sueltas",
    asRange: "De una a otra, por pasos",
    sizes: "Medidas",
    addSize: "Otra medida",
    add1: "Añadir",
    removeSize: (size) => `Quitar ${size} de la lista`,
    from: "De",
    to: "A",
    step: "Paso",
    fitted: "Montado al llegar",
    fittedHelp: "Lo que había cuando llegó el vehículo. Un suplemento solo se puede quitar hasta donde haya uno montado.",
    labour: "Mano de obra",
    labourHelp: "Horas, o cualquier medida que mantenga en todo el caso.",
    parts: "Piezas, en la misma medida",
    padLength: "Asiento de la ballesta, largo a lo largo del vehículo",
    padHelp: "Hace falta para el grosor de la cuña.",
    thinEdge: "Cuña, borde fino",
    splineTeeth: "Dientes de la estría",
    pitch: "Morro del piñón hacia arriba por cada milímetro o pulgada",
    pitchHelp: "Déjelo vacío si las ballestas o los brazos están descritos: se calcula de ellos.",
    remove: "Quitar del estante",
  },
};
