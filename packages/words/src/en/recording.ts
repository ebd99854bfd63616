import type { RecordingWords } from "../recording-words.js";

const OF = { channels: "channels", sets: "data sets", chunks: "chunks", samples: "samples" } as const;

const CANNOT_HOLD = {
  "several-clocks": "channels on several clocks; write a table or a universal file, or one track at a time",
  "uneven-clock": "samples at uneven times or at a rate that is no whole number; write a table or a universal file",
  nothing: "a recording without channels; choose at least one",
  "missing-values": "samples without a value; write a table",
} as const;

export const recording: RecordingWords = {
  wholeRecording: "the recording",
  places: { line: "line", byte: "byte", channel: "channel", column: "column", time: "time" },
  faults: {
    "recording.empty": () => "the file is empty; copy it from the recorder again",
    "recording.unknown-format": ({ start }) =>
      `this is no recording that is known here (it starts with "${start}"); give a WAV, a table (CSV, TSV) or a universal file (UFF 58)`,
    "recording.truncated": ({ promised, present }, n) =>
      `the file is cut short: its header promises ${n.plain(promised, 0)} bytes and ${n.plain(present, 0)} are there; copy it from the recorder again`,
    "recording.part-missing": ({ part }) =>
      `the part "${part}" that belongs here is missing, so the file is broken or cut short; copy it from the recorder again`,
    "recording.header-contradicts": ({ field, got, expected }) =>
      `the header contradicts itself or the file: "${field}" is ${got}, which would have to be ${expected}; export the recording again`,
    "recording.encoding-unsupported": ({ encoding }) =>
      `samples or text written as ${encoding} are not read here; export as PCM (16, 24 or 32 bits), as float, or as a table in UTF-8`,
    "recording.no-samples": () => "there is no sample in it; record again, or look whether the right file was taken",
    "recording.no-time": ({ columns }) =>
      `no column is a time (there are: ${columns}); name the column of times with its unit, such as time_s or time_ms`,
    "recording.no-column-names": () =>
      "no line above the numbers names the columns; add one, such as time_s,accel_z_ms2,speed_kmh, with as many names as columns",
    "recording.columns-differ": ({ got, expected }, n) =>
      `this line has ${n.plain(got, 0)} cells, the names above it are ${n.plain(expected, 0)}; correct or remove the line`,
    "recording.not-a-number": ({ column, found }) =>
      `"${found}" in column "${column}" is no number; correct it, or leave the cell empty where there was no value`,
    "recording.line-too-long": ({ limit }, n) =>
      `the line is longer than ${n.plain(limit, 0)} bytes, so this is hardly a table of readings; look whether the right file was taken`,
    "recording.time-backwards": ({ sample, time, before }, n) =>
      `time runs backwards at sample ${n.plain(sample, 0)}: ${n.plain(time, 6)}\u00a0s comes after ${n.plain(before, 6)}\u00a0s; look whether two recordings were joined, and give one of them`,
    "recording.too-few-samples": ({ samples, needed }, n) =>
      `${n.plain(samples, 0)} samples with a time and a value are too few to work on; ${n.plain(needed, 0)} at least are needed, and some tens of seconds are useful`,
    "recording.no-steady-rate": ({ gaps, samples }, n) =>
      `no steady sampling rate fits the times (${n.plain(gaps, 0)} gaps in ${n.plain(samples, 0)} samples); record with a fixed rate, nothing else running on the device`,
    "recording.no-time-signal": ({ sets }, n) =>
      `none of the ${n.plain(sets, 0)} data sets 58 in it is a function of time; export the time history, not a spectrum`,
    "recording.too-many": ({ of, limit }, n) => `it has more than ${n.plain(limit, 0)} ${OF[of]}, which is more than is read; split it`,
    "recording.channel-unknown": ({ got, allowed }) => `there is no channel "${got}"; there are: ${allowed}`,
    "recording.unit-unknown": ({ channel, unit }) =>
      `the unit "${unit}" of "${channel}" is not known; write one such as m/s^2, g, km/h, rpm or V`,
    "recording.unit-of-another-kind": ({ channel, got, expected }) =>
      `"${channel}" is ${got} and would have to be ${expected}; choose another channel, or name its unit in the case`,
    "recording.cannot-hold": ({ format, what }) => `${format} cannot hold ${CANNOT_HOLD[what]}`,
  },
};
