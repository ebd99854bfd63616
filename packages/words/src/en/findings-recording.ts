import type { FindingCatalogue } from "../catalogue.js";

/** What came up while a recording was read. */
export const recordingFindings = {
  "recording.length-open": {
    title: "Length left open",
    says: (of) =>
      `The recorder never wrote how long the recording is; it was read to the end of the file, ${of.amount("seconds", 1)}\u00a0s.`,
    doNext: () => "Look whether the recording is as long as the test was.",
  },
  "recording.no-full-scale": {
    title: "Full scale not known",
    says: (of) =>
      `A sound file holds shares of full scale, and the case does not say what full scale of ${of.text("channel")} stands for: sizes in m/s² cannot be told, which part shakes can.`,
    doNext: () => "Enter fullScale and unit of the channel under recordings in the case.",
  },
  "recording.last-line-broke-off": {
    title: "Last line broke off",
    says: (of) => `Line ${of.amount("line", 0)}, the last, ends before its last cell; it was left out.`,
    doNext: () => "Nothing; a recorder that is switched off while it writes does this.",
  },
  "recording.sets-skipped": {
    title: "Data sets left out",
    says: (of) => `${of.amount("sets", 0)} of the data sets in the file are no functions of time; they were left out.`,
    doNext: () => "Nothing, if the time histories are all there.",
  },
  "recording.unit-taken": {
    title: "Unit taken from the kind of data",
    says: (of) => `The file names no unit for ${of.text("channel")}; ${of.text("unit")} was taken, as its kind of data says.`,
    doNext: () => "Check the unit, and enter it under recordings in the case if it is another.",
  },
  "recording.values-missing": {
    title: "Values missing",
    says: (of) => `${of.amount("count", 0)} samples of ${of.text("channel")} have no value.`,
    doNext: () => "Single ones were filled from their neighbours; longer stretches count as gaps.",
  },
  "recording.times-repeat": {
    title: "Times written twice",
    says: (of) => `${of.amount("count", 0)} samples of ${of.text("channel")} have the time of the one before; they were left out.`,
    doNext: () => "Nothing, if they are few.",
  },
  "recording.stamps-rounded": {
    title: "Times are rounded",
    says: (of) =>
      `The times of ${of.text("channel")} are rounded (${of.amount("jitterPercent", 1)}\u00a0% of a step); the samples were taken as evenly spaced at the measured ${of.amount("rateHz", 2)}\u00a0Hz.`,
    doNext: () => "Nothing; a file whose times have more decimals would not need this.",
  },
  "recording.stamps-uneven": {
    title: "Uneven sampling",
    says: (of) =>
      `The samples of ${of.text("channel")} are not evenly spaced (jitter ${of.amount("jitterPercent", 1)}\u00a0% of a step); they were interpolated at their times to ${of.amount("rateHz", 2)}\u00a0Hz.`,
    doNext: () => "Trust no order above a quarter of that rate; record with a device that samples by its own clock.",
  },
  "recording.gaps": {
    title: "Gaps in the recording",
    says: (of) =>
      `${of.text("channel")} has ${of.amount("count", 0)} gaps, ${of.amount("lostS", 2)}\u00a0s together; the longest stretch without one is ${of.amount("longestRunS", 1)}\u00a0s, and only it was used.`,
    doNext: () => "Record again if that is too short: a wire instead of a radio link, nothing else running on the device.",
  },
  "recording.channel-left-out": {
    title: "Channel left out",
    says: (of) => `${of.text("channel")} does not cover the same samples as ${of.text("other")}, so it was left out.`,
    doNext: (of) => `To work on it alone, name it: --channel ${of.text("channel")}.`,
  },
  "recording.speed-followed": {
    title: "The speed was followed in the vibration itself",
    says: (of) =>
      `No column tells the speed, so a line in the vibration was followed, as if it were ${of.order("part", "order")}, within ${of.bareRoadSpeed("fromKmh")} to ${of.roadSpeed("toKmh")}. That it is that order was assumed and is not shown by it; where the drive was slower or faster, what was followed is something else.`,
    doNext: () => "Log the road speed, or mount a tachometer, and record once more before anything is taken apart.",
  },
} satisfies Partial<FindingCatalogue>;
