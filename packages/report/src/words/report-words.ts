/** Sentences and headings that only the report needs. Numbers arrive as finished text, unit included. */
/** The sections Correct and Prove; what the terminal says too stands in the catalogue. */
export interface CorrectionSectionWords {
  readonly noneChosen: (adjusters: number) => string;
  readonly chosenOn: (day: string) => string;
  readonly change: string;
  readonly chosen: string;
  readonly made: string;
  readonly notMade: string;
  readonly madeNoDate: string;
  readonly basis: string;
  /** "Driveline rear, as found, 13 April 2026". */
  readonly basisOf: (driveline: string, stage: string, day: string | null) => string;
  readonly basisGone: string;
  readonly chance: string;
  readonly chanceOf: (share: string) => string;
  readonly chanceNotAsked: string;
  readonly nearlyAll: string;
  readonly hardlyAny: string;
  readonly foretoldOf: (driveline: string) => string;
  readonly before: string;
  readonly slipSign: string;
  readonly atSpeed: (speed: string) => string;
  readonly notRecorded: string;
  readonly steps: string;
  readonly caution: string;
  readonly noSteps: string;
  readonly unknownStep: (code: string) => string;
  readonly figureOf: (driveline: string) => string;
  readonly provedBy: (day: string) => string;
  readonly provedUndated: string;
  readonly shaftsOf: (driveline: string) => string;
  readonly resultsOf: (driveline: string) => string;
  readonly difference: string;
  readonly agreement: string;
  readonly agrees: string;
  readonly differs: string;
  readonly differsLine: (shaft: string, foretold: string, measured: string, difference: string, within: string) => string;
  readonly stillOut: string;
  readonly notHeldAgainst: string;
  readonly notJudged: string;
  readonly asGaugedNote: string;
  readonly road: string;
}

/** The section Record. */
export interface RecordSectionWords {
  /** The gear is null where it is not known. */
  readonly turning: (from: string, to: string, gear: string | null) => string;
  readonly recording: string;
  readonly heardOn: string;
  readonly channel: string;
  readonly speedFrom: string;
  readonly theVibration: string;
  readonly length: string;
  readonly lengthOf: (seconds: string, rate: string) => string;
  readonly verdict: string;
  readonly noVerdict: string;
  readonly follows: (order: string, probability: string, share: string) => string;
  readonly heardIn: (recording: string) => string;
  readonly unexplained: (share: string) => string;
  readonly unseen: (orders: string, band: string) => string;
}

export interface ReportWords {
  readonly kind: string;
  readonly pageOf: { readonly page: string; readonly of: string };
  readonly headings: {
    readonly conclusion: string;
    readonly vehicle: string;
    readonly driveline: (driveline: string, stage: string) => string;
    readonly asGauged: string;
    readonly readings: string;
    readonly shafts: string;
    readonly joints: string;
    readonly cancellation: string;
    readonly motion: string;
    readonly figures: string;
    readonly findings: string;
    readonly sureness: string;
    readonly compare: (driveline: string) => string;
    readonly cautions: string;
    readonly remarks: string;
    readonly provenance: string;
  };
  readonly conclusion: {
    readonly within: string;
    readonly over: string;
    readonly uncertain: string;
    readonly withheld: string;
    readonly notGauged: string;
    readonly nothingAnalysed: string;
    readonly doNext: string;
    readonly nothingToDo: string;
    readonly jointOver: (joint: string, angle: string, limit: string) => string;
    readonly jointUnder: (joint: string, angle: string, limit: string) => string;
    readonly jointUncertain: (joint: string, interval: string, low: string, high: string) => string;
    readonly jointsWithin: (joints: string) => string;
    readonly jointNotGauged: (joint: string) => string;
    readonly equivalentOver: (angle: string, limit: string) => string;
    readonly equivalentUncertain: (interval: string, limit: string) => string;
    readonly equivalentWithin: (angle: string, limit: string) => string;
    readonly motion: (quantity: string, acceleration: string, limit: string, speed: string) => string;
    readonly motionUncertain: (quantity: string, interval: string, limit: string, speed: string) => string;
    readonly motionCaution: (quantity: string, interval: string, caution: string, speed: string) => string;
    readonly motionWithin: (speed: string) => string;
  };
  readonly accepted: {
    readonly title: (finding: string) => string;
    readonly says: string;
    readonly by: (name: string, date: string) => string;
    readonly unnamed: (date: string) => string;
    readonly unrecorded: string;
    readonly reason: (reason: string) => string;
    readonly noReason: string;
  };
  readonly record: RecordSectionWords;
  readonly correct: CorrectionSectionWords;
  readonly withheld: string;
  readonly facts: {
    readonly driveline: string;
    readonly axleRatio: string;
    readonly transferRatio: string;
    readonly gears: string;
    readonly tyre: string;
    readonly circumference: (length: string) => string;
    readonly cylinders: string;
    readonly maxShaftSpeed: string;
    readonly speedTaken: (speed: string) => string;
    readonly complaintWords: Readonly<Record<string, string>>;
    readonly complaintSpeed: string;
    readonly speeds: (low: string, high: string, unit: string) => string;
    readonly gear: string;
    readonly feel: string;
    readonly load: string;
    readonly notGiven: string;
    readonly gauge: string;
    readonly step: (angle: string) => string;
    readonly accuracy: (angle: string, common: boolean) => string;
    readonly zeroCheck: string;
    readonly zeroPair: (first: string, turned: string) => string;
    readonly displayLower: { readonly "display-left": string; readonly "display-right": string };
    readonly zeroNotChecked: string;
    readonly takenAtNotGiven: string;
    readonly accepted: string;
  };
  readonly readings: {
    readonly caption: string;
    readonly number: string;
    readonly where: string;
    readonly shown: string;
    readonly lower: string;
    readonly side: string;
    readonly stage: string;
    readonly remark: string;
    readonly end: { readonly "source-end": (shaft: string) => string; readonly "driven-end": (shaft: string) => string };
    readonly between: (of: string, zeroedOn: string) => string;
    readonly face: (shaft: string) => string;
    readonly topToward: { readonly "source-end": string; readonly "driven-end": string };
    readonly relative: (lower: string) => string;
    readonly setAside: string;
    readonly seeFinding: (numbers: string) => string;
    readonly none: string;
    readonly headingCaption: string;
    readonly offset: string;
    readonly over: string;
    readonly toward: { readonly left: string; readonly right: string };
    readonly straight: string;
    readonly wholeLength: string;
    readonly headingNotMeasured: string;
  };
  readonly tables: {
    readonly shafts: string;
    readonly joints: string;
    readonly cancellation: string;
    readonly motion: string;
    readonly budget: string;
    readonly compare: string;
    readonly limits: string;
    readonly quantity: string;
    readonly result: string;
    readonly from: string;
    /** "Where: the reading of ...". */
    readonly where: (place: string) => string;
    readonly allowed: (low: string, high: string) => string;
    readonly inclinationSign: string;
    readonly headingSign: (towardPositive: "left" | "right") => string;
    readonly leftOver: string;
    readonly best: (section: string) => string;
    readonly atSpeed: (speed: string) => string;
    readonly driveOf: (section: string) => string;
    readonly coastOf: (section: string) => string;
    readonly upTo: (limit: string) => string;
    readonly warnOver: (warn: string, over: string) => string;
    readonly singleAmplitude: string;
    readonly restOfBudget: string;
    readonly benchLimit: (met: string, accepted: string) => string;
    readonly noLimit: string;
    readonly caution: string;
  };
  readonly whyNot: {
    readonly because: (finding: string) => string;
    readonly generic: string;
    readonly benchNotCross: string;
    readonly benchPhasing: string;
    readonly benchPlane: string;
  };
  readonly limitStated: string;
  readonly limitOf: (joints: string, source: string) => string;
  readonly sureness: { readonly zero: string; readonly heading: (shaft: string) => string; readonly noBudget: string };
  readonly remarks: {
    readonly lead: string;
    readonly technician: string;
    readonly signature: string;
    readonly date: string;
  };
  readonly provenance: {
    readonly tool: string;
    readonly file: string;
    readonly formats: string;
    readonly seed: string;
    readonly draws: string;
    readonly drawn: string;
    readonly created: string;
    readonly updated: string;
    readonly repeatable: string;
    readonly limitsLead: string;
    readonly codesShown: string;
  };
}
