import { CASE_FORMAT, CASE_VERSION, type Case } from "@halfturn/casefile";
import { along, bothEnds, COARSE_GAUGE, face, gauged, straight } from "./demo-gauging.js";
import { CROSS_COUNTRY, frontShaft, onePiece, TRUCK, twoPiece, VAN } from "./demo-vehicles.js";

type Story = Omit<Case, "format" | "version" | "updatedAt">;

const told = (story: Story): Case => ({ format: CASE_FORMAT, version: CASE_VERSION, ...story });

/** Made-up cases of an invented fleet, one for each state that work can be in. Beside them the shop shows the examples of the case file. */
export const demoCases: readonly Case[] = [
  told({
    id: "skerry-post-0203",
    title: "Post van 3: hum between 85 and 95 km/h",
    createdAt: "2026-06-02T07:40:00Z",
    vehicle: { label: "Skerry Post, van 3 (medium van, rear drive)", ...VAN },
    complaint: {
      speedKmh: [85, 95],
      gear: "5",
      feel: ["floor"],
      load: "cruise",
      notes: "Just come in. Described by the driver; nothing measured yet.",
    },
    drivelines: [onePiece(1380, null)],
    gauging: [],
  }),
  told({
    id: "skerry-rescue-0177",
    title: "Recovery truck 2: heavy drone when loaded",
    createdAt: "2026-05-20T09:15:00Z",
    vehicle: { label: "Skerry Rescue, recovery truck 2 (long truck, rear drive)", ...TRUCK },
    complaint: {
      speedKmh: [70, 90],
      gear: "5",
      feel: ["floor", "mirrors"],
      load: "drive",
      notes: "Since the support bearing was renewed.",
    },
    drivelines: [twoPiece(1150, 1290)],
    gauging: [
      gauged(
        "rear",
        "2026-05-20T10:05:00Z",
        [face("source", 3.2), ...bothEnds("front", 4.3), ...bothEnds("back", 10.6), face("driven", 3.9)],
        [straight("source", 400), straight("front", 1150), straight("back", 1290), straight("driven", 300)],
      ),
    ],
    adjusters: [
      {
        id: "bearing-plates",
        kind: "support-drop",
        label: "Support bearing plates",
        labour: 0.6,
        driveline: "rear",
        joint: "J2",
        stock: { minMm: -12, maxMm: 30, stepMm: 3 },
        fittedMm: 12,
      },
      {
        id: "wedge",
        kind: "axle-wedge",
        label: "Spring pad wedges",
        labour: 1.5,
        driveline: "rear",
        stock: { sizesDeg: [-4, -3, -2, -1, 1, 2, 3, 4] },
        fittedDeg: 0,
        padLengthMm: 150,
        thinEdgeMm: 2,
      },
    ],
  }),
  told({
    id: "skerry-quarry-0019",
    title: "Quarry 4x4 9: shudder pulling away after the lift",
    createdAt: "2026-04-28T06:30:00Z",
    vehicle: { label: "Skerry Quarries, cross-country vehicle 9 (raised suspension)", ...CROSS_COUNTRY },
    complaint: { speedKmh: [20, 60], gear: "2", feel: ["seat", "floor"], load: "drive", notes: "Body raised by 75 mm last month." },
    drivelines: [onePiece(980), frontShaft(720)],
    states: [{ id: "normal" }, { id: "pulling", load: "drive-torque" }],
    gauging: [
      gauged(
        "rear",
        "2026-04-28T07:20:00Z",
        [face("source", 2.1), ...bothEnds("shaft", 13.4), face("driven", 5.2)],
        [straight("source", 300), straight("shaft", 980), straight("driven", 250)],
        { notes: "Shaft only just clears the crossmember." },
      ),
    ],
  }),
  told({
    id: "skerry-topografia-0064",
    title: "Furgoneta de topografía 6: vibración a 110 km/h, ángulos correctos",
    createdAt: "2026-05-11T08:00:00Z",
    vehicle: { label: "Topografía Skerry, furgoneta 6 (tracción trasera)", ...VAN },
    complaint: {
      speedKmh: [105, 115],
      gear: "5",
      feel: ["floor"],
      load: "cruise",
      notes: "Empezó después de cambiar los neumáticos. No cambia con la carga.",
    },
    drivelines: [onePiece(1420)],
    gauging: [
      gauged(
        "rear",
        "2026-05-11T08:50:00Z",
        [face("source", 2.4), ...bothEnds("shaft", 4.1), face("driven", 2.5)],
        [straight("source", 400), straight("shaft", 1420), straight("driven", 300)],
        { notes: "Medido en elevador de plataforma, depósito medio lleno. Tubo limpio bajo el imán." },
      ),
    ],
    notes: "Los ángulos están dentro de los límites: seguir con equilibrado de ruedas y descentramiento.",
  }),
  told({
    id: "skerry-transit-0110",
    title: "Shuttle bus 5: gauged with the wheels hanging",
    createdAt: "2026-05-26T12:10:00Z",
    vehicle: { label: "Skerry Transit, shuttle bus 5 (rear drive)", ...VAN },
    complaint: { speedKmh: [60, 80], gear: "4", feel: ["floor"], load: "drive", notes: "Two-post lift was the only one free." },
    drivelines: [onePiece(1510)],
    gauging: [
      gauged(
        "rear",
        "2026-05-26T12:40:00Z",
        [face("source", 3), ...bothEnds("shaft", 10.9), face("driven", -1.2)],
        [straight("source", 400), straight("shaft", 1510), straight("driven", 300)],
        { state: { rideHeight: "drooped", wheels: "hanging" }, notes: "To be taken again at ride height." },
      ),
    ],
  }),
  told({
    id: "skerry-works-0088",
    title: "Tipper 8: gauge too coarse to tell",
    createdAt: "2026-05-18T13:00:00Z",
    vehicle: { label: "Skerry Works, tipper 8 (short truck, rear drive)", ...TRUCK },
    complaint: { speedKmh: [65, 75], gear: "5", feel: ["seat"], load: "cruise", notes: "Only the old pendulum gauge was at hand." },
    drivelines: [onePiece(1240)],
    gauging: [
      gauged(
        "rear",
        "2026-05-18T13:30:00Z",
        [face("source", 1), along("shaft", 6.5), face("driven", 3)],
        [straight("source", 400), straight("shaft", 1240), straight("driven", 300)],
        { gauge: COARSE_GAUGE },
      ),
    ],
  }),
  told({
    id: "skerry-water-0045",
    title: "Camión cisterna 4: falta medir la fase del árbol",
    createdAt: "2026-06-01T10:20:00Z",
    vehicle: { label: "Aguas Skerry, cisterna 4 (camión largo)", ...TRUCK },
    complaint: {
      speedKmh: [75, 85],
      gear: "5",
      feel: ["mirrors"],
      load: "cruise",
      notes: "Se desmontó el árbol para cambiar las crucetas.",
    },
    drivelines: [onePiece(1600, null)],
    gauging: [
      gauged(
        "rear",
        "2026-06-01T11:00:00Z",
        [face("source", 2.2), ...bothEnds("shaft", 5.6), face("driven", 2.6)],
        [straight("source", 400), straight("shaft", 1600), straight("driven", 300)],
      ),
    ],
  }),
  told({
    id: "skerry-forestry-0058",
    title: "Logging truck 1: yokes a quarter turn out after a repair",
    createdAt: "2026-04-07T07:05:00Z",
    vehicle: { label: "Skerry Forestry, logging truck 1 (long truck, rear drive)", ...TRUCK },
    complaint: {
      speedKmh: [50, 85],
      gear: "5",
      feel: ["floor", "seat"],
      load: "cruise",
      notes: "Shaft came back from a repair elsewhere.",
    },
    drivelines: [twoPiece(1080, 1420, 90)],
    gauging: [
      gauged(
        "rear",
        "2026-04-07T08:00:00Z",
        [face("source", 2.8), ...bothEnds("front", 3.6), ...bothEnds("back", 7.4), face("driven", 3.4)],
        [straight("source", 400), straight("front", 1080), straight("back", 1420), straight("driven", 300)],
      ),
    ],
  }),
];
