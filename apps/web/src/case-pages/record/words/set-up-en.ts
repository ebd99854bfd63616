import type { SetUpWords } from "./set-up-words.js";

export const setUp: SetUpWords = {
  opening: "Opening the file",
  refused: "This file cannot be read",
  gone: "It was changed or moved while it was being read. Open it again.",
  channels: "Channels to listen to",
  noChannels:
    "None of its channels is an acceleration, a vibration velocity, a displacement or a sound as it stands. Say below what one of them measures.",
  clock: (rate, seconds) => `${rate} samples per second, ${seconds}\u00a0s.`,
  even: "Even steps, as the file says.",
  jitter: (share) => `Measured from the time stamps, which wander by ${share} of a step.`,
  gaps: (count, seconds) => `Gaps: ${count}, ${seconds}\u00a0s lost; the longest stretch without one is used.`,
  noGaps: "No gaps.",
  reading: (share) => `Reading: ${share}`,
  inMemory: {
    "no-files": (limit) =>
      `This browser gives the page no files of its own (a private window, plain HTTP or an older browser): the samples are held in memory, ${limit} at most in all chosen channels together.`,
    "no-room": (limit) =>
      `There is no room on this device to put the samples aside: they are held in memory, ${limit} at most in all chosen channels together.`,
  },
  inMemoryRefused: {
    "no-files": "Choose fewer channels, or open the app on this machine itself or over HTTPS, in a window that is not private.",
    "no-room": "Free some space (8 bytes for each sample), or choose fewer channels.",
  },
  scale: "Unit and full scale of a channel",
  scaleHelp: "Only where the file does not say it. Without it frequencies are right, and amplitudes are shares of full scale.",
  unit: "Unit",
  unitUnknown: "not known",
  fullScale: "Full scale in that unit",
  fullScaleHelp: "What the greatest sample stands for: of a WAV, its full scale.",
  sensitivity: "Sensitivity",
  sensitivityHelp: "What the channel gives for one such unit, as the sensor's sheet says: 0.1 for 100 mV/g.",
  speed: "Where the speed comes from",
  speedFrom: { constant: "One steady speed", vibration: "The vibration itself" },
  tachometer: (channel) => `${channel} as tachometer`,
  tachometerOn: "The tachometer looks at",
  perTurn: "Pulses per turn",
  constant: "Driven at",
  constantHelp: "As the speedometer showed it. A speed that was logged tells more.",
  rangeHelp:
    "Nobody wrote the speed down: the clearest line in this range stands in for it. Narrow the range as far as it is known; a wide one may leave the verdict open.",
  slowest: "Slowest",
  fastest: "Fastest",
  filter: "The sensor's filter, Hz (-3\u00a0dB)",
  filterHelp: "From its sheet. It tells that nothing above half the sampling rate could fold back.",
  more: "Sensor",
  name: "Name the part",
  working: (share) => `Listening: ${share}`,
  cancel: "Cancel",
  lacking: "The speed is still missing.",
};
