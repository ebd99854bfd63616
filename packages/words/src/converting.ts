/** What the command line says about writing a recording in another format. */
export interface Converting {
  readonly brief: string;
  readonly description: string;
  readonly flags: {
    readonly output: string;
    readonly case: string;
    readonly channel: string;
    readonly from: string;
    readonly to: string;
    readonly encoding: string;
    readonly fullScale: string;
    readonly decimal: string;
  };
  readonly outputKind: string;
  readonly seconds: string;
  readonly aboveZero: string;
  readonly progress: (share: string) => string;
  readonly encodingUnfit: (encoding: string, kind: string, allowed: string) => string;
  readonly fullScaleUnfit: string;
  readonly decimalUnfit: string;
  readonly stretchEmpty: string;
  /** Of a channel no sample lies between --from and --to. */
  readonly outside: (file: string) => string;
  readonly tooLarge: (channel: string, reaches: string, fullScale: string) => string;
  readonly written: (path: string, channels: string) => string;
  /** Above what belongs into the case. */
  readonly entry: string;
  /** A sound file begins at nought. */
  readonly startLost: (seconds: string) => string;
}
