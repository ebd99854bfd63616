import type { FindingCatalogue } from "../catalogue.js";

/** Readings that contradict one another. */
export const readingFindings = {
  "gauging.tube-ends-disagree": {
    title: "The two ends of one tube disagree",
    says: (of) =>
      `${of.name("shaft")} reads ${of.lean("sourceEndDeg")} at its source end and ${of.lean("drivenEndDeg")} at its driven end: ${of.gauged("differenceDeg")} apart, where the gauge explains ${of.gauged("allowedDeg")}.`,
    doNext: (of) => `${of.doubt} Read both ends from one side, on bare metal, with the shaft turned so that the face is square.`,
  },
  "gauging.repeats-disagree": {
    title: "Repeated readings disagree",
    says: (of) =>
      `${of.name("shaft")} was read as ${of.lean("firstDeg")} and as ${of.lean("secondDeg")}: ${of.gauged("differenceDeg")} apart, where the gauge explains ${of.gauged("allowedDeg")}.`,
    doNext: (of) => `${of.doubt} Lift the gauge off and clean the spot between readings.`,
  },
  "gauging.difference-disagrees": {
    title: "Zeroed reading disagrees",
    says: (of) =>
      `The zeroed reading${of.has("from") ? ` from ${of.name("from")} to ${of.name("to")}` : ""} does not fit the readings of the shafts themselves: ${of.gauged("differenceDeg")} apart, where the gauge explains ${of.gauged("allowedDeg")}.`,
    doNext: (of) => `${of.doubt} Zero the gauge on the first shaft and read the second from the same side without switching off.`,
  },
  "gauging.sides-disagree": {
    title: "Left and right disagree",
    says: (of) =>
      `${of.name("shaft")} reads ${of.lean("firstDeg")} where ${of.lean("secondDeg")} was to be expected from the other side: ${of.gauged("differenceDeg")} apart, where the gauge explains ${of.gauged("allowedDeg")}.`,
    doNext: (of) => `${of.doubt} Do the turn-round check of the gauge, then read the shaft again from one side.`,
  },
  "gauging.zero-check-disagrees": {
    title: "Turn-round check disagrees",
    says: (of) =>
      `A reading of the turn-round check lies ${of.gauged("differenceDeg")} from what the others foretell, where the gauge explains ${of.gauged("allowedDeg")}.`,
    doNext: (of) => `${of.doubt} Repeat the check twice on one firm, clean spot; if it still disagrees, do not use this gauge.`,
  },
  "gauging.wrong-side-of-level": {
    title: "Lower end likely noted the wrong way round",
    says: (of) => `The readings fit only if the other end of ${of.name("shaft")} was the lower one.`,
    doNext: (of) => `Look at the shaft: which end is lower? Correct the lower end in ${of.place}, or read it again.`,
  },
  "gauging.rows-swapped": {
    title: "Two readings likely swapped",
    says: (of) => `The readings of ${of.numbers.all(of.names("shafts"))} fit only if they stand in each other's place.`,
    doNext: () => "Read both again and correct the case; nothing was swapped for you.",
  },
  "gauging.not-zeroed": {
    title: "Gauge likely not zeroed",
    says: (of) =>
      `The reading from ${of.name("from")} to ${of.name("to")} fits an ordinary reading of ${of.name("to")}, not one zeroed on ${of.name("from")}.`,
    doNext: () => "Zero the gauge on the first shaft and read the second again, or enter the reading as an ordinary one.",
  },
  "gauging.reading-set-aside": {
    title: "A reading was set aside",
    says: (of) =>
      of.text("shaft") === "zero"
        ? "One reading of the turn-round check contradicts the others and was left out of the result."
        : `${of.name("shaft")} was read as ${of.lean("readingDeg")} in ${of.place}; that contradicts the others and was left out of the result.`,
    doNext: () => "Read that spot again. If it was a slip, correct it; if it stands, look for its cause before fitting anything.",
  },
} satisfies Partial<FindingCatalogue>;
