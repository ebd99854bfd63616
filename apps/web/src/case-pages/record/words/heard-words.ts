/** What was found in a recording, and its pictures. */
export interface HeardWords {
  readonly refused: string;
  readonly speeds: (from: string, to: string) => string;
  readonly typedSpeed: string;
  readonly keep: string;
  readonly keptNow: string;
  readonly findings: string;
  readonly remedy: string;
  readonly amplitude: (value: string, half: string) => string;
  readonly explains: (share: string) => string;
  readonly probable: (share: string) => string;
  readonly between: (low: string, high: string) => string;
  readonly smaller: (count: string) => string;
  readonly pictures: string;
  readonly shown: string;
  readonly waveform: string;
  readonly waveformHelp: string;
  readonly stretchFrom: string;
  readonly stretchTo: string;
  readonly stretch: (from: string, to: string) => string;
  readonly wholeStretch: string;
  readonly spectrum: string;
  readonly spectrumHelp: string;
  readonly peaks: string;
  readonly peak: (frequency: string, amplitude: string) => string;
  readonly peakIs: (frequency: string, speed: string) => string;
  readonly peakIsNothing: (frequency: string) => string;
  readonly speedFirst: string;
  readonly map: string;
  readonly mapOrders: string;
  readonly mapTime: string;
  readonly mapScale: (low: string, high: string) => string;
  readonly folded: string;
  readonly noMap: string;
}
