/** For tests: a case with every key that the format's agreed outline shows, as plain data that a test may change. */
export const designCase = () => ({
  format: "halfturn-case",
  version: 1,
  id: "outline",
  title: "Outline",
  createdAt: "2026-01-02T03:04:05Z",
  updatedAt: "2026-01-02T03:04:05.678+01:00",
  vehicle: {
    label: "Truck",
    axleRatio: 3.73,
    gears: [{ label: "5", ratio: 1 }],
    transferRatio: 1,
    tyre: { size: "265/70R17" },
    cylinders: 6,
    maxShaftSpeedRpm: 3600,
    powertrain: { pivotForwardMm: 1350, pivotUpMm: -60, mountForwardMm: 250, mountUpMm: -180 },
  },
  complaint: { speedKmh: [90, 115], gear: "5", feel: ["floor"], load: "cruise", notes: "..." },
  drivelines: [
    {
      id: "rear",
      runs: "rearward",
      source: { label: "Transmission output" },
      sections: [
        {
          id: "front",
          label: "Front section",
          lengthMm: 1180,
          phasingDeg: 90,
          phasingMeasured: true,
          tube: { outerDiameterMm: 76.2, wallMm: 2.1, material: "steel" },
          slip: { engagedMm: 70, minimumEngagedMm: 45, inwardTravelMm: 30 },
        },
        { id: "back" },
      ],
      driven: { label: "Pinion" },
      joints: [
        { id: "J1", kind: "cross" },
        { id: "J2", kind: "cross", support: { bearingMounted: "below-crossmember", bearingToJointMm: 120, bearingIs: "source-side" } },
        { id: "J3", kind: "cross" },
      ],
      axle: {
        centreToJointMm: 330,
        jointAboveCentreMm: 0,
        springPosition: "above-axle",
        steered: false,
        casterDeg: null,
        windUpDeg: { drive: 1.0, coast: 0.5 },
      },
    },
  ],
  limits: {},
  states: [{ id: "normal" }, { id: "laden", axleTravelMm: -40, pinionPitchDeg: 0.6, load: "none" }],
  gauging: [
    {
      driveline: "rear",
      stage: "as-found",
      state: { rideHeight: "normal", wheels: "on-ground" },
      gauge: {
        resolutionDeg: 0.1,
        accuracyDeg: 0.1,
        common: false,
        zeroCheck: [
          { deg: 0.2, lower: "display-left" },
          { deg: 0.4, lower: "display-right" },
        ],
      },
      readings: [
        { at: "source", deg: 1.8, lower: "driven-end", side: "left" },
        { at: "front:source-end", deg: 4.4, lower: "driven-end", side: "left" },
        { at: "front:driven-end", deg: 4.4, lower: "driven-end", side: "left" },
        { at: "back", deg: 3.1, lower: "driven-end", side: "right" },
        { at: "driven", face: "square", deg: 2.0, topLeans: "driven-end", side: "left" },
        { between: ["source", "front"], deg: 2.6, lower: "driven-end", side: "left" },
      ],
      headings: [{ of: "front", lateralMm: 12, toward: "left", overMm: 1180 }],
    },
  ],
  adjusters: [],
  recordings: [],
  observations: [],
  runouts: [],
  balance: [],
  corrections: [],
});

/** For tests: the outline with the value at a path replaced, or taken away where the value is undefined. */
export function designCaseWith(path: readonly (string | number)[], value: unknown): unknown {
  const document: unknown = designCase();
  let here = document as Record<string | number, unknown>;
  for (const part of path.slice(0, -1)) here = here[part] as Record<string | number, unknown>;
  const last = path.at(-1) ?? "";
  if (value === undefined) delete here[last];
  else here[last] = value;
  return document;
}
