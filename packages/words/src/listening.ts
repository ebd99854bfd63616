/** What the command line says about a recording and the part that it follows. */
export interface Listening {
  readonly brief: string;
  readonly description: string;
  readonly recordingArgument: string;
  readonly flags: {
    readonly case: string;
    readonly channel: string;
    readonly speedFrom: string;
    readonly speedFile: string;
    readonly figure: string;
    readonly keep: string;
  };
  readonly figureKind: string;
  readonly progress: (share: string) => string;
  readonly stopped: string;
  /** No column tells how fast anything turned. */
  readonly noSpeed: (file: string) => string;
  /** No order stands out by which the speed could be followed. */
  readonly noRidge: (file: string) => string;
  /** A long recording found no room in the folder for temporary files. */
  readonly noRoom: (file: string, folder: string, why: string) => string;
  /** Where the speed comes from when no column tells it. */
  readonly theVibration: string;
  readonly speedKind: (column: string) => string;
  readonly noVibration: (file: string, channels: string) => string;
  readonly unknownTachometerPart: (column: string, part: string, allowed: string) => string;
  readonly figureWritten: (path: string) => string;
  readonly keepNeedsFile: string;
  readonly kept: (path: string) => string;
  readonly contributions: string;
  /** The gear is null where it is not known. */
  readonly measured: (channels: string, speed: string, gear: string | null) => string;
  readonly amplitudesIn: (channel: string) => string;
  readonly turned: (turns: string, band: string) => string;
  readonly speedCorrected: (share: string) => string;
  readonly with: (orders: string) => string;
  readonly unseen: string;
  readonly unseenOrder: (order: string, from: string, to: string) => string;
  readonly foldsTo: (frequency: string) => string;
  readonly unseenWhy: (band: string) => string;
  readonly smaller: (count: string) => string;
  readonly verdict: string;
  readonly noVerdict: string;
  readonly probabilityMeans: string;
}
