import type { Converting } from "./converting.js";
import type { Listening } from "./listening.js";
import type { Serving } from "./serving.js";

/** What the command line program says about itself and its work. Nothing here is about a driveline. */
export interface Terminal {
  readonly brief: string;
  readonly description: string;
  readonly commands: {
    readonly new: string;
    readonly validate: string;
    readonly analyse: string;
    readonly predict: string;
    readonly plan: string;
    readonly orders: string;
    readonly report: string;
    readonly completion: string;
    readonly completionInstall: string;
    readonly completionUninstall: string;
  };
  readonly descriptions: {
    readonly new: string;
    readonly validate: string;
    readonly analyse: string;
    readonly predict: string;
    readonly plan: string;
    readonly orders: string;
    readonly report: string;
    readonly completion: string;
  };
  readonly converting: Converting;
  readonly listening: Listening;
  readonly serving: Serving;
  readonly args: { readonly file: string; readonly newFile: string; readonly typed: string };
  readonly flags: {
    readonly layout: string;
    readonly title: string;
    readonly force: string;
    readonly stage: string;
    readonly gauging: string;
    readonly accept: string;
    readonly strict: string;
    readonly json: string;
    readonly seed: string;
    readonly draws: string;
    readonly units: string;
    readonly lang: string;
    readonly output: string;
    readonly paper: string;
    readonly change: string;
    readonly maxChanges: string;
    readonly keep: string;
    readonly show: string;
    readonly choose: string;
    readonly speed: string;
    readonly gear: string;
    readonly turns: string;
    readonly help: string;
    readonly helpAll: string;
    readonly version: string;
    readonly escape: string;
  };
  readonly headers: {
    readonly usage: string;
    readonly aliases: string;
    readonly commands: string;
    readonly flags: string;
    readonly arguments: string;
  };
  readonly keywords: { readonly default: string; readonly separator: string };
  /** Errors of use: one line each, naming the word typed and what to type instead. */
  readonly usage: {
    readonly unknownCommand: (input: string, near: string) => string;
    readonly unknownFlag: (input: string, near: string) => string;
    readonly unknownAlias: (input: string) => string;
    readonly notAllowed: (flag: string, input: string, allowed: string) => string;
    readonly flagWithoutValue: (flag: string) => string;
    readonly flagTwice: (flag: string) => string;
    readonly negatedWithValue: (flag: string) => string;
    readonly argumentMissing: (placeholder: string) => string;
    readonly argumentTooMany: (input: string, expected: number) => string;
    readonly badValue: (place: string, input: string, why: string) => string;
    readonly wholeNumber: (least: string, most: string) => string;
    readonly findingCode: (near: string) => string;
    readonly keepUnknown: (input: string, near: string, allowed: string) => string;
    readonly noSuchPlan: (flag: string, number: number, count: number) => string;
    readonly nothingToRecord: (number: number) => string;
    readonly chooseNeedsFile: string;
    readonly outputKind: string;
    readonly roadSpeed: (least: string, most: string) => string;
  };
  readonly files: {
    readonly noCase: (path: string) => string;
    readonly noRecording: (path: string) => string;
    readonly isFolder: (path: string) => string;
    readonly noPermission: (path: string) => string;
    readonly noFolder: (path: string) => string;
    readonly exists: (path: string) => string;
    readonly cannotRead: (path: string, why: string) => string;
    readonly cannotWrite: (path: string, why: string) => string;
    readonly notUtf8: (path: string) => string;
    readonly standardInput: string;
  };
  readonly made: {
    readonly created: (path: string) => string;
    readonly createdNext: (path: string) => string;
    readonly reportWritten: (path: string) => string;
    readonly accepted: (code: string, path: string) => string;
    readonly acceptedBefore: (code: string) => string;
    readonly acceptedUnrecorded: (code: string) => string;
    readonly acceptIdle: (code: string) => string;
  };
  readonly valid: {
    readonly headline: (path: string) => string;
    readonly drivelines: (count: number, joints: number) => string;
    readonly gaugings: (count: number, readings: number) => string;
    readonly problems: (count: number) => string;
    readonly missing: string;
    readonly complete: string;
    readonly noVehicle: string;
    readonly noComplaint: string;
    readonly noLengths: (driveline: string) => string;
  };
  readonly analysed: {
    readonly heading: (driveline: string, stage: string, gauging: number) => string;
    readonly atSpeed: (speed: string) => string;
    readonly nothing: (path: string) => string;
    readonly noStage: (stage: string, has: string) => string;
    readonly noGaugingNumber: (number: number, count: number) => string;
    readonly stageMismatch: (number: number, is: string, wanted: string) => string;
    readonly withheldHint: (codes: string) => string;
    readonly seedAndDraws: (seed: number, draws: string) => string;
    readonly place: (path: string) => string;
  };
  readonly crash: (what: string) => string;
}
