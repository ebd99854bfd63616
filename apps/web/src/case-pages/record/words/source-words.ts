/** Where a recording comes from: a file, or this device. */
export interface SourceWords {
  readonly title: string;
  readonly help: string;
  readonly choose: string;
  readonly drop: string;
  readonly cautions: string;
  readonly kept: string;
  readonly keptInCase: string;
  readonly notHere: string;
  readonly openAgain: string;
  readonly save: string;
  readonly remove: string;
  readonly removeSure: string;
  readonly removeNo: string;
  readonly notKeptOnDevice: string;
  readonly phone: {
    readonly title: string;
    readonly motion: string;
    readonly sound: string;
    readonly soundOnly: string;
    readonly placeIt: string;
    readonly beside: string;
    readonly withSpeed: string;
    readonly asking: string;
    readonly stop: string;
    readonly running: (seconds: string) => string;
    readonly measured: (rate: string) => string;
    readonly speedNow: (speed: string) => string;
    readonly noSpeedYet: string;
    readonly denied: string;
    readonly insecure: string;
    readonly missing: string;
    readonly silent: string;
    readonly howLongTitle: string;
    readonly howLong: string;
    readonly brokenOff: (when: string) => string;
    readonly finish: string;
    readonly dropSure: string;
    readonly name: (moment: string) => string;
  };
}
