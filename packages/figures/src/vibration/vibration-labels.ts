/** What the picture of a recorded vibration says. */
export interface VibrationLabels {
  readonly title: string;
  readonly orderAxis: string;
  readonly timeAxis: string;
  /** Which channel is shown. */
  readonly channel: (channel: string) => string;
  /** "darkest from 0.50 m/s²": the value comes with its unit, or as a share of full scale where that is not known. */
  readonly darkest: (amplitude: string) => string;
  readonly eachHalf: string;
  readonly shareOfScale: string;
  readonly verdict: string;
  readonly foldedBack: string;
  /** What a line's numbers are: amplitude and share. */
  readonly explains: (share: string) => string;
}
