/** What is found while a recording is read and put on even steps of time. */
export const RECORDING_FINDING_CODES = [
  "recording.length-open",
  "recording.no-full-scale",
  "recording.last-line-broke-off",
  "recording.sets-skipped",
  "recording.unit-taken",
  "recording.values-missing",
  "recording.times-repeat",
  "recording.stamps-rounded",
  "recording.stamps-uneven",
  "recording.gaps",
  "recording.channel-left-out",
  "recording.speed-followed",
] as const;
