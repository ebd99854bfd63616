import type { Terminal } from "../terminal.js";
import { converting } from "./converting.js";
import { listening } from "./listening.js";
import { serving } from "./serving.js";

const typed = (near: string): string => (near === "" ? "" : `; did you mean ${near}?`);

export const terminal: Terminal = {
  brief: "Joint angles, cancellation and motion of a vehicle driveline, from a case file",
  description:
    "Halfturn reads a case file: a driveline and what was gauged on it. It says how each joint works, what the joints leave uncancelled, how sure that is, and what to do next.",
  commands: {
    new: "Write a new case file for a layout",
    validate: "Check a case file and say what it still lacks",
    analyse: "Work out angles, cancellation and motion from what was gauged",
    predict: "Say what a change would do before anything is fitted",
    plan: "Find the least invasive correction that the stock allows",
    orders: "Say what turns how fast at a road speed and what it can shake at",
    report: "Write the report of a case as PDF or HTML",
    completion: "Completion of commands by the shell",
    completionInstall: "Install completion for bash (adds a line to ~/.bashrc)",
    completionUninstall: "Remove completion for bash again",
  },
  descriptions: {
    new: "Writes a valid case file with every shaft and joint in its place and nothing gauged yet. An existing file is left alone unless --force is given.",
    validate:
      "Prints every problem of the file, one line each with its place and the remedy, or says that it is valid and what it still lacks.\nExit 0: valid. 2: not valid or not readable.",
    analyse:
      "Without --stage or --gauging, the last gauging of the latest stage of each driveline is taken. --accept overrides a stop finding and records that in the case file.\nExit 0: computed, whatever the verdict. 1: nothing could be answered, or with --strict a limit is passed or a stop finding is open. 2: bad input or usage.",
    predict:
      "Each --change names an adjuster of the case and its amount with its unit: --change wedge=2deg --change spacer=-6mm --change front=1step. What each sign means is said in the case file: + is pinion nose up, bearing lowered or toward the vehicle's left, mount or body raised, link longer, driven-end yoke clockwise seen from the source.\nExit 0: computed, whatever the verdict. 1: a stop finding stands, something needed was not gauged or measured, or the case has no adjusters. 2: bad input or usage.",
    plan: "Looks through every combination of at most --max-changes of the case's adjusters and ranks them by the chance that all limits hold in all states, then by labour, then by what is left of the tightest limit. --show prints the steps of another plan than the first; --choose also writes it into the case, to be held against the next gauging.\nExit 0: computed, whatever the verdict. 1: a stop finding stands, a phasing or another thing needed was not measured, or the case has no adjusters. 2: bad input or usage. 130: stopped by hand.",
    orders:
      "Frequencies follow from the tyre and the ratios of the vehicle. Without --gear the complaint's gear is taken. Orders that a recording of --turns turns of the wheel cannot tell apart are named; --turns is what ten seconds hold unless it is given.\nExit 0: computed. 1: tyre or axle ratio is missing, so nothing can be answered. 2: bad input or usage.",
    report:
      "The ending of the output file, .pdf or .html, says which kind is written.\nExit 0: written. 1: nothing could be answered. 2: bad input or usage.",
    completion: "Completion is for bash.",
  },
  converting,
  listening,
  serving,
  args: { file: "Case file; - reads standard input", newFile: "Case file to write", typed: "Words typed so far" },
  flags: {
    layout: "Layout of the driveline",
    title: "Title of the case",
    force: "Overwrite the file if it is there already",
    stage: "Only gaugings of this stage",
    gauging: "Gauging by its number in the file, from 0",
    accept: "Override a stop finding and record that (repeatable)",
    strict: "Exit 1 if a limit is passed or a stop is open",
    json: "Print the result as JSON and nothing else",
    seed: "Seed of the random draws",
    draws: "Number of random draws behind the intervals",
    units: "Units of printed lengths and road speeds; JSON stays metric",
    lang: "Language of the words",
    output: "File to write, ending in .pdf or .html",
    paper: "Paper size",
    change: "A change to try, such as wedge=2deg (repeatable)",
    maxChanges: "Changes at once, at most",
    keep: "Adjuster, kind or axle to leave alone (repeatable)",
    show: "Plan whose steps are printed, by its number",
    choose: "Plan to write into the case, by its number",
    speed: "Road speed in km/h, or with its unit: 65mph",
    gear: "Gear driven, by its label in the case",
    turns: "Turns of the wheel that a recording holds",
    help: "Print this help and exit",
    helpAll: "Print help with everything hidden and exit",
    version: "Print the version and exit",
    escape: "Take all that follows as arguments",
  },
  headers: { usage: "USAGE", aliases: "ALIASES", commands: "COMMANDS", flags: "FLAGS", arguments: "ARGUMENTS" },
  keywords: { default: "default:", separator: "separator:" },
  usage: {
    unknownCommand: (input, near) => `There is no command "${input}"${near === "" ? "; halfturn --help lists all commands" : typed(near)}`,
    unknownFlag: (input, near) => `There is no flag ${input}${near === "" ? "; --help lists all flags" : typed(near)}`,
    unknownAlias: (input) => `There is no short flag -${input}; --help lists all flags`,
    notAllowed: (flag, input, allowed) => `--${flag}: "${input}" is not known; write ${allowed}`,
    flagWithoutValue: (flag) => `--${flag} needs a value: write --${flag} VALUE`,
    flagTwice: (flag) => `--${flag} is given more than once; give it once`,
    negatedWithValue: (flag) => `--${flag} takes no value; remove what follows the =`,
    argumentMissing: (placeholder) => `${placeholder} is missing; add it after the command`,
    argumentTooMany: (input, expected) =>
      `"${input}" is one argument too many (${expected} expected); remove it, or put quotes round a name with spaces`,
    badValue: (place, input, why) => `${place}: "${input}" ${why}`,
    wholeNumber: (least, most) => `is not a whole number from ${least} to ${most}; write one`,
    findingCode: (near) => `is not the code of a finding${near === "" ? "; write a code as analyse prints it" : typed(near)}`,
    keepUnknown: (input, near, allowed) =>
      `--keep: there is no adjuster and no kind "${input}"${near === "" ? `; write ${allowed}` : typed(near)}`,
    noSuchPlan: (flag, number, count) =>
      `--${flag}: there is no plan ${number}; ${count < 2 ? `there is ${count === 0 ? "none" : "one only"}` : `write a number from 1 to ${count}`}`,
    nothingToRecord: (number) => `--choose: plan ${number} changes nothing, so there is nothing to record; choose another or leave it out`,
    chooseNeedsFile: "--choose: standard input cannot be written back; name a case file",
    roadSpeed: (least, most) => `is not a road speed from ${least} to ${most}\u00a0km/h; write one such as 105 or 65mph`,
    outputKind: "does not say which kind to write; let the name end in .pdf or .html",
  },
  files: {
    noCase: (path) => `${path}: there is no such file; check the name, or make a case with "halfturn new"`,
    noRecording: (path) => `${path}: there is no such file; check the name and the folder of the recording`,
    isFolder: (path) => `${path}: is a folder; name a file`,
    noPermission: (path) => `${path}: permission denied; change the permissions or name another file`,
    noFolder: (path) => `${path}: the folder is not there; make it first or name another file`,
    exists: (path) => `${path}: is there already and was left alone; name another file, or add --force to overwrite it`,
    cannotRead: (path, why) => `${path}: cannot be read (${why}); check the file and try again`,
    cannotWrite: (path, why) => `${path}: cannot be written (${why}); name another file or folder`,
    notUtf8: (path) => `${path}: is not UTF-8 text; check that this is the case file, or save it as UTF-8`,
    standardInput: "standard input",
  },
  made: {
    created: (path) => `${path} written.`,
    createdNext: (path) => `Fill in vehicle, lengths and what was gauged, then: halfturn analyse ${path}`,
    reportWritten: (path) => `${path} written.`,
    accepted: (code, path) => `Accepted ${code}: recorded in ${path}.`,
    acceptedBefore: (code) => `Accepted ${code}: recorded before.`,
    acceptedUnrecorded: (code) => `Accepted ${code} for this run only: standard input cannot be written back.`,
    acceptIdle: (code) => `--accept ${code}: there is no such stop finding here, so nothing was recorded.`,
  },
  valid: {
    headline: (path) => `${path}: valid`,
    drivelines: (count, joints) => `${count} ${count === 1 ? "driveline" : "drivelines"}, ${joints} ${joints === 1 ? "joint" : "joints"}`,
    gaugings: (count, readings) =>
      `${count} ${count === 1 ? "gauging" : "gaugings"}, ${readings} ${readings === 1 ? "reading" : "readings"}`,
    problems: (count) => `${count} ${count === 1 ? "problem" : "problems"}`,
    missing: "Still lacking",
    complete: "Nothing is lacking for an analysis.",
    noVehicle: "vehicle: not described; add at least its label",
    noComplaint: "complaint: not described; add speed, gear and where it is felt",
    noLengths: (driveline) =>
      `lengthMm: ${driveline} has a section without its length, joint centre to joint centre; measure it before planning a correction`,
  },
  analysed: {
    heading: (driveline, stage, gauging) => `${driveline}, ${stage} (gauging ${gauging})`,
    atSpeed: (speed) => `at ${speed}`,
    nothing: (path) =>
      `${path}: nothing can be answered, because no shaft has been gauged; gauge the shafts at ride height and add the readings`,
    noStage: (stage, has) => `--stage: the case has no gauging of stage "${stage}"${has === "" ? "; add one first" : `; it has ${has}`}`,
    noGaugingNumber: (number, count) =>
      count === 0
        ? `--gauging: there is no gauging ${number}; the case has none yet, add one first`
        : `--gauging: there is no gauging ${number}; write a number from 0 to ${count - 1}`,
    stageMismatch: (number, is, wanted) =>
      `--gauging ${number} is of stage "${is}", not "${wanted}"; leave out --stage or name another gauging`,
    withheldHint: (codes) => `Put the cause right and gauge again. To override on your own responsibility: --accept ${codes}`,
    seedAndDraws: (seed, draws) => `Seed ${seed}, ${draws} draws.`,
    place: (path) => `at ${path}`,
  },
  crash: (what) => `halfturn stopped by a fault of its own: ${what}. Please report it with the case file.`,
};
