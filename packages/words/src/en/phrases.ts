import type { Numbers } from "../numbers/numbers.js";
import type { Phrases } from "../phrases.js";
import { isMeasuredHeading, spelledPlace } from "../what-to-repeat.js";

const TURN_ROUND = "Do the turn-round check of the gauge: read, turn the gauge round on the same spot, read again";

export const phrases = (numbers: Numbers): Phrases => ({
  causes: {
    "lower-end": "the lower end noted the wrong way round",
    side: "read from the other side than noted",
    "rows-swapped": "two readings noted in each other's place",
    "not-zeroed": "the gauge not zeroed",
    "rust-or-paint": "rust or paint under the magnet",
    "bent-tube": "a bent tube",
    "not-on-machined-face": "the gauge not on the machined face",
    "face-not-square": "the shaft not turned so that the face is square",
    "not-same-spot": "not turned round on the same spot",
    misread: "the display misread",
    "zero-far-off": "a gauge whose zero is far off",
  },
  places: {
    reading: (shaft) => `the reading of ${shaft}`,
    end: {
      "source-end": (shaft) => `the reading of ${shaft} at its source end`,
      "driven-end": (shaft) => `the reading of ${shaft} at its driven end`,
    },
    face: (shaft) => `the reading of the face of ${shaft}`,
    between: (zeroedOn, readOn) => `the reading of ${readOn} zeroed on ${zeroedOn}`,
    from: { left: "from the left", right: "from the right" },
    number: (number) => `no. ${number}`,
    zeroCheck: (number) => `reading ${number} of the turn-round check`,
    entries: {
      drivelines: (number) => `driveline ${number}`,
      sections: (number) => `section ${number}`,
      joints: (number) => `joint ${number}`,
      states: (number) => `state ${number}`,
      gauging: (number) => `gauging ${number}`,
      readings: (number) => `reading ${number}`,
      headings: (number) => `plan-view measurement ${number}`,
      zeroCheck: (number) => `reading ${number} of the turn-round check`,
      acceptedFindings: (number) => `accepted finding ${number}`,
      adjusters: (number) => `adjuster ${number}`,
      corrections: (number) => `correction ${number}`,
      gears: (number) => `gear ${number}`,
      accessories: (number) => `accessory ${number}`,
      recordings: (number) => `recording ${number}`,
      observations: (number) => `observation ${number}`,
      runouts: (number) => `runout measurement ${number}`,
      balance: (number) => `balance run ${number}`,
    },
    entry: (list, number) => `entry ${number} of "${list}"`,
    within: (inner, outer) => `${inner} of ${outer}`,
    heading: (shaft) => `the plan-view measurement of ${shaft}`,
  },
  readPlace: (spelled, nameOf) => {
    const { kind, shaft, other } = spelledPlace(spelled);
    if (kind === "turn-round") return `${TURN_ROUND}.`;
    if (kind === "between") return `Zero the gauge on ${nameOf(shaft)} and read ${nameOf(other)} from the same side.`;
    if (kind === "along") return `Read ${nameOf(shaft)}.`;
    return `Read ${nameOf(shaft)} at its ${kind === "source-end" ? "source" : "driven"} end.`;
  },
  repeat: ({ of, path, share }, nameOf) => {
    const part = `${numbers.share(share)} of the uncertainty`;
    if (of === "zero") return `${TURN_ROUND}; the gauge's zero carries ${part}.`;
    if (of.startsWith("heading:")) {
      const again = isMeasuredHeading(path) ? " again" : "";
      return `Measure${again} how far ${nameOf(of.slice("heading:".length))} runs to one side in plan view (sideways offset between its ends); that carries ${part}.`;
    }
    return `Lift the gauge off, clean the spot and take ${nameOf(path)} again; it carries ${part}.`;
  },
  doubt: (likelier, readings, causes) => {
    const first = likelier ?? numbers.all(readings);
    return [
      likelier === null
        ? `The numbers do not tell which is wrong: take ${first} again.`
        : `Likelier wrong is ${first}: take that again first.`,
      ...(causes.length === 0 ? [] : [`Likeliest: ${numbers.any(causes)}.`]),
    ].join(" ");
  },
});
