import type { Converting } from "../converting.js";

export const converting: Converting = {
  brief: "Write a recording in another format",
  description:
    "Reads a recording (WAV, CSV, TSV or universal file, told by what is in it) and writes it as the ending of --output says: .wav, .csv, .tsv or .uff. Values are written in SI, vibration velocities and displacements in mm/s and mm; times stay as they are. Names, units and full scales that the recording does not say come from --case. A sound file holds samples at even steps only: others are put on even steps first, as listen does, and of several stretches the longest is taken. What the case then has to say about a sound file is printed. An existing file is left alone unless --force is given.\nExit 0: written. 1: no room to work in. 2: bad input or usage. 130: stopped by hand.",
  flags: {
    output: "File to write, ending in .wav, .csv, .tsv or .uff",
    case: "Case file that says units and full scales",
    channel: "Channel to write (repeatable); all when left out",
    from: "Seconds from the first sample at which to begin",
    to: "Seconds from the first sample at which to end",
    encoding: "Samples of a WAV (pcm24 when left out) or UFF (text)",
    fullScale: "Full scale of a WAV's vibration, in m/s^2 or Pa",
    decimal: "Decimal sign of a table",
  },
  outputKind: "does not say which format to write; let the name end in .wav, .csv, .tsv or .uff",
  seconds: "is no number of seconds from 0 up; write one such as 12.5",
  aboveZero: "is no number above 0; write one such as 20",
  progress: (share) => `Converting: ${share}`,
  encodingUnfit: (encoding, kind, allowed) => `--encoding: a ${kind} is not written as ${encoding}; write ${allowed}`,
  fullScaleUnfit: "--full-scale: only a WAV has a full scale; leave it out, or let --output end in .wav",
  decimalUnfit: "--decimal: only a table has a decimal sign; leave it out, or let --output end in .csv or .tsv",
  stretchEmpty: "--to: the stretch ends before it begins; let --to be larger than --from",
  outside: (file) =>
    `${file}: of one of the channels no sample lies between --from and --to, which count seconds from the first sample; take a longer stretch, or other channels with --channel`,
  tooLarge: (channel, reaches, fullScale) =>
    `--full-scale: "${channel}" reaches ${reaches}, which is more than ${fullScale}; give a larger one, leave it out, or write --encoding float32`,
  written: (path, channels) => `${path} written: ${channels}.`,
  entry: "A sound file says neither names nor units. In the case, under recordings:",
  startLost: (seconds) =>
    `The first sample was taken at ${seconds}\u00a0s, and a sound file begins at 0: move a speed log of its own by as much, or write a table.`,
};
