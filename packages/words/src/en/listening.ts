import type { Listening } from "../listening.js";

export const listening: Listening = {
  brief: "Say which rotating part a recorded vibration follows",
  description:
    "Reads a recording of a road test (WAV, a table as CSV or TSV, or a universal file 58; told by what is in it) and lays its vibration to the orders of what turns on the vehicle. Speed comes from a column of the recording or of --speed-file: speed_kmh, engine_rpm, or tachometer pulses tacho_PART such as tacho_propeller_shaft. Full scale, units, pulses per turn and gear of a recording stand in the case, under recordings.\nExit 0: computed, whatever the verdict. 1: nothing could be answered. 2: bad input or usage. 130: stopped by hand.",
  recordingArgument: "Recording: WAV, CSV, TSV or UFF",
  flags: {
    case: "Case file of the vehicle; - reads standard input",
    channel: "Channel to work on; all accelerations when left out",
    speedFrom: "Column that tells the speed",
    speedFile: "File that holds that column, if it is another",
    figure: "Picture of the vibration to write, ending in .svg",
    keep: "Write what was heard into the case, for the report",
  },
  figureKind: "does not end in .svg; let the name of the picture end in .svg",
  progress: (share) => `Listening: ${share}`,
  stopped: "Stopped by hand. Nothing was written.",
  noSpeed: (file) =>
    `${file}: no column tells how fast anything turned; add one such as speed_kmh, engine_rpm or tacho_propeller_shaft, give a log with --speed-file, or enter complaint.speedKmh in the case, so that the speed can be followed in the vibration`,
  noRidge: (file) =>
    `${file}: no column tells how fast anything turned, and no order stands out clearly enough within the speeds of the complaint to follow it by; log the speed, or mount a tachometer`,
  noRoom: (file, folder, why) =>
    `${file}: is too long to be held in memory, and the folder for temporary files, ${folder}, cannot take it (${why}); make room there, let TMPDIR (TEMP on Windows) name another folder, or cut the recording`,
  theVibration: "the vibration itself",
  speedKind: (column) =>
    `--speed-from: "${column}" is no speed that can be used here; take a road speed (speed_kmh), an engine speed (engine_rpm) or pulses (tacho_propeller_shaft)`,
  noVibration: (file, channels) =>
    `${file}: none of its channels is a vibration or a sound (there are: ${channels}); name one with --channel, or its unit under recordings in the case`,
  unknownTachometerPart: (column, part, allowed) =>
    `--speed-from: "${column}" is a tachometer on "${part}", which does not turn on this vehicle; name the column after one of ${allowed}`,
  figureWritten: (path) => `${path} written.`,
  keepNeedsFile: "--keep: standard input cannot be written back; name a case file",
  kept: (path) => `Kept in ${path}, under recordings.`,
  contributions: "What the vibration follows",
  measured: (channels, speed, gear) => `Channels: ${channels}. Speed from ${speed}${gear === null ? "" : `, gear ${gear}`}.`,
  amplitudesIn: (channel) => `Amplitudes are of ${channel}, half peak to peak.`,
  turned: (turns, band) => `The wheel made ${turns} turns; shares are of the vibration up to ${band}\u00a0Hz.`,
  speedCorrected: (share) => `The speed was set right by ${share}, so that the orders lie where they were heard.`,
  with: (orders) => `together with ${orders}`,
  unseen: "What this recording cannot show",
  unseenOrder: (order, from, to) => `${order}: ${from} to ${to}\u00a0Hz`,
  foldsTo: (frequency) => `would show near ${frequency}\u00a0Hz, if the sensor lets it through`,
  unseenWhy: (band) => `They lie above ${band}\u00a0Hz, where this sampling rate ends. That nothing is heard of them rules nothing out.`,
  smaller: (count) => `${count} smaller orders are left out here; --json has them all.`,
  verdict: "Verdict",
  noVerdict: "No verdict",
  probabilityMeans: "Probability: that this order is the largest one. Amplitude ± is the half width of the 95\u00a0% interval.",
};
