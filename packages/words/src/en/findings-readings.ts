import type { FindingCatalogue } from "../catalogue.js";

/** Readings that contradict one another. */
export const readingFindings = {
  "gauging.tube-ends-disagree": {
    title: "The two ends of one tube disagree",
    says: (of) =>
      `${of.name("shaft")} was read as ${of.gauged("sourceEndDeg")} at its source end and ${of.gauged("drivenEndDeg")} at its driven end: ${of.gauged("differenceDeg")} apart, where the gauge explains ${of.gauged("allowedDeg")}.`,
    doNext: () =>
      "Clean paint and rust from under the magnet and read both ends again from the same side, on the machined face or the bare tube, with the shaft turned so that the face is square. If they still disagree, check the tube for a bend.",
  },
  "gauging.repeats-disagree": {
    title: "Repeated readings disagree",
    says: (of) =>
      `Repeated readings of ${of.name("shaft")} lie ${of.gauged("differenceDeg")} apart, where the gauge explains ${of.gauged("allowedDeg")}.`,
    doNext: () => "Lift the gauge off, clean the spot and the magnet, and read three times. Strike out the reading that stands alone.",
  },
  "gauging.difference-disagrees": {
    title: "Zeroed reading disagrees",
    says: (of) =>
      `The zeroed reading from ${of.name("from")} to ${of.name("to")} does not fit the readings of the two shafts: ${of.gauged("differenceDeg")} apart, where the gauge explains ${of.gauged("allowedDeg")}.`,
    doNext: () =>
      "Zero the gauge on the first shaft, read the second from the same side without switching off, and read both shafts once more without zeroing.",
  },
  "gauging.sides-disagree": {
    title: "Left and right disagree",
    says: (of) =>
      `${of.name("shaft")} reads ${of.gauged("differenceDeg")} differently from left and right: the gauge has a zero error or lay on a different spot.`,
    doNext: () => "Do the turn-round check, write both readings down, and read the shaft again from one side.",
  },
  "gauging.zero-check-disagrees": {
    title: "Turn-round check disagrees with itself",
    says: (of) =>
      `The pairs of the turn-round check give zeros ${of.gauged("differenceDeg")} apart, where the gauge explains ${of.gauged("allowedDeg")}.`,
    doNext: () =>
      "Repeat the check on one firm, clean spot: read, turn the gauge round on the same spot, read. Do it twice. If it still disagrees, do not use this gauge.",
  },
  "gauging.wrong-side-of-level": {
    title: "Lower end likely noted the wrong way round",
    says: (of) => `The readings fit only if the other end of ${of.name("shaft")} was the lower one.`,
    doNext: () => "Look at the shaft: which end is lower? Correct the word in that reading, or read it again.",
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
    says: (of) => `One reading of ${of.name("shaft")} contradicts the others and was left out of the result.`,
    doNext: () => "Read that spot again. If it was a slip, correct it; if it stands, look for its cause before fitting anything.",
  },
} satisfies Partial<FindingCatalogue>;
