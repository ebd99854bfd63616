import type { FindingCatalogue } from "../catalogue.js";
import { capital } from "../order-words.js";

/** What came up while a vibration was laid to a rotating part. */
export const vibrationFindings = {
  "pulses.missing": {
    title: "Pulses missing",
    says: (of) => `${of.amount("count", 0)} tachometer pulses were missing and were counted in.`,
    doNext: () => "Look at the mark, the sensor and its gap if there are many.",
  },
  "pulses.double": {
    title: "Pulses doubled",
    says: (of) => `${of.amount("count", 0)} tachometer pulses came too early and were left out.`,
    doNext: () => "Look for a second bright spot beside the mark if there are many.",
  },
  "attribution.clipped": {
    title: "The sensor was at the end of its scale",
    says: (of) =>
      `${of.share("clippedShare")} of the samples stand at the end of the scale: amplitudes are too small, and false multiples of orders may show.`,
    doNext: () => "Record again with a larger range, or with the sensor where it shakes less.",
  },
  "attribution.order-not-observable": {
    title: "An order that this recording cannot show",
    says: (of) =>
      `${capital(of.order("part", "order"))} ran at ${of.amount("lowestHz", 0)} to ${of.amount("highestHz", 0)}\u00a0Hz; the recording shows nothing above ${of.amount("limitHz", 0)}\u00a0Hz. Its silence rules nothing out.${of.has("foldsToHz") ? ` If the sensor lets it through, it shows near ${of.amount("foldsToHz", 0)}\u00a0Hz.` : ""}`,
    doNext: () => "Record with a sensor of a higher rate before this order is ruled out.",
  },
  "attribution.folded-back": {
    title: "A vibration above half the sampling rate shows at a false frequency",
    says: (of) =>
      `What shows at ${of.amount("seenHz", 0)}\u00a0Hz moves with the speed as ${of.order("part", "order")} at ${of.amount("frequencyHz", 0)}\u00a0Hz would.`,
    doNext: () => "Record with a sensor of a higher rate: its amplitude cannot be told from this one.",
  },
  "attribution.fold-back-coincides": {
    title: "Two orders show at one frequency",
    says: (of) =>
      `At this sampling rate ${of.order("otherPart", "otherOrder")} would show where ${of.order("part", "order")} lies, through most of the recording.`,
    doNext: () => "Record with a sensor of a higher rate, or with the speed rising slowly through the complaint.",
  },
  "attribution.coincidence": {
    title: "Two orders that this recording cannot part",
    says: (of) => `${capital(of.order("part", "order"))} and ${of.order("otherPart", "otherOrder")} lie in one place.`,
    doNext: (of) =>
      of.text("partedByGear") === "true"
        ? "Record the same speed in another gear: only one of the two moves."
        : of.has("wheelTurns")
          ? `Count pulses of the shaft and record ${of.amount("wheelTurns", 0)} turns of the wheel at steady speed, or take one of the two out of the test (a change of wheels, a disconnected shaft).`
          : "Take one of the two out of the test: a change of wheels, a disconnected shaft.",
  },
  "attribution.speed-loose": {
    title: "The speed is not known well enough",
    says: (of) => `Within the error of the speed it may be ${of.order("part", "order")} or ${of.order("otherPart", "otherOrder")}.`,
    doNext: () => "Count pulses of a shaft, or measure the rolling circumference of the wheel and enter it.",
  },
  "attribution.speed-corrected": {
    title: "Speed set right by the vibration",
    says: (of) =>
      `The orders lie ${of.signedShare("correctionShare")} from where the speed and the tyre put them, and were taken to lie there.`,
    doNext: () => "Measure the rolling circumference if the difference is more than wear and pressure explain.",
  },
  "attribution.speed-steady": {
    title: "Steady speed",
    says: (of) =>
      `The speed changed by ${of.share("changeShare")} only, so something that always rings at one frequency would look like an order.`,
    doNext: () => "Record once more with the speed rising slowly through the complaint.",
  },
  "attribution.several": {
    title: "More than one order is large",
    says: (of) => `${capital(of.order("part", "order"))} and ${of.order("otherPart", "otherOrder")} are about as large.`,
    doNext: () => "Treat both as causes; isolate them one after the other.",
  },
  "attribution.nothing-found": {
    title: "No order stands out",
    says: () => "Nothing that turns is heard above the noise.",
    doNext: () => "Fix the sensor nearer to where it is felt, drive at the speed of the complaint, and record for a minute.",
  },
  "attribution.mostly-unexplained": {
    title: "Most of it is no order",
    says: (of) =>
      `${of.share("unexplainedShare")} of what was recorded follows no order of any part; the largest is ${of.order("part", "order")}.`,
    doNext: () =>
      "Check axle ratio, tyre and gear in the case; look for what does not turn with the wheels: road, loose parts, a resonance.",
  },
  "attribution.resonance": {
    title: "Something resonates",
    says: (of) =>
      of.text("excitedBy") === "orders"
        ? `An order is largest while it passes ${of.amount("frequencyHz", 1)}\u00a0Hz and falls off on either side.`
        : `At ${of.amount("frequencyHz", 1)}\u00a0Hz something rings whatever the speed (${of.share("energyShare")} of what was recorded).`,
    doNext: () =>
      "Look for what rings there (mounts, brackets, floor, a long shaft): the same order shakes less when that is put right or tuned away.",
  },
  "attribution.beat": {
    title: "Two orders beat",
    says: (of) =>
      `${capital(of.order("part", "order"))} and ${of.order("otherPart", "otherOrder")} are close: the shaking swells and fades about ${of.amount("beatHz", 1)} times a second.`,
    doNext: () => "Expect it to come and go; putting either right ends the beat, not the other's shaking.",
  },
  "attribution.sound-only": {
    title: "A sound, not a vibration",
    says: () => "A microphone tells frequencies only; how loud a part is says little about how much it shakes.",
    doNext: () => "Use an accelerometer on the floor or the seat rail for amplitudes.",
  },
  "attribution.slip-changes": {
    title: "The slip changed during the recording",
    says: (of) =>
      `The engine ran ahead of the transmission by ${of.share("leastShare")} at one time and by ${of.share("mostShare")} at another: its orders are smeared, and larger than they are shown.`,
    doNext: () =>
      "Record once more with the converter locked or the clutch fully home; where that cannot be, log engine_rpm and take the speed from there.",
  },
  "attribution.differentiated": {
    title: "A velocity or a displacement, not an acceleration",
    says: () =>
      "Amplitudes were turned into accelerations at each order's own frequency. Shares, and which order is the largest, are of what was recorded: slow orders count for more in it than in an acceleration.",
    doNext: () => "Compare amplitudes only with recordings of the same kind; where a fast order is suspected, record an acceleration.",
  },
  "attribution.engine-left-out": {
    title: "The engine was left out",
    says: () => "The gear is not known, so neither is the engine's speed: what is named here may as well be an order of the engine.",
    doNext: () => "Enter the gears of the vehicle and the gear of the recording, or record once more in another gear.",
  },
} satisfies Partial<FindingCatalogue>;
