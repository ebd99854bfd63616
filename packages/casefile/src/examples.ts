export interface ExampleCase {
  readonly name: string;
  /** Where the file lies beside this package; reading it is up to the caller. */
  readonly url: string;
}

/** The example cases of an invented fleet. The addresses are written out so that a bundler can find them. */
export const examples: readonly ExampleCase[] = [
  { name: "one-piece", url: new URL("../examples/one-piece.halfturn.json", import.meta.url).href },
  { name: "two-piece", url: new URL("../examples/two-piece.halfturn.json", import.meta.url).href },
  { name: "three-piece", url: new URL("../examples/three-piece.halfturn.json", import.meta.url).href },
  { name: "four-wheel-drive", url: new URL("../examples/four-wheel-drive.halfturn.json", import.meta.url).href },
  { name: "corrected", url: new URL("../examples/corrected.halfturn.json", import.meta.url).href },
];
