/** How the vehicle stands, which gauge, and its zero. */
export interface SetUpWords {
  readonly title: string;
  readonly help: string;
  readonly driveline: string;
  readonly stage: string;
  readonly wheels: string;
  readonly rideHeight: string;
  readonly side: string;
  readonly sideHelp: string;
  readonly start: string;
  readonly startAnyway: string;
  readonly chooseWheels: string;
  readonly gauge: string;
  readonly typed: string;
  readonly phone: string;
  readonly resolution: string;
  readonly accuracy: string;
  readonly label: string;
  readonly phoneHelp: string;
  readonly cautions: string;
  readonly open: string;
  readonly done: string;
  readonly gaugings: string;
  readonly newGauging: string;
  readonly gaugingName: (stage: string, readings: number) => string;
  readonly older: string;

  readonly zero: string;
  readonly zeroHelp: string;
  readonly zeroPhoneHelp: string;
  readonly zeroStart: string;
  readonly zeroFirst: string;
  readonly zeroTurned: string;
  readonly zeroDisplay: Readonly<Record<"display-left" | "display-right", string>>;
  readonly zeroDisplayAsk: string;
  readonly zeroFound: (zero: string) => string;
  readonly zeroNone: string;
  readonly zeroLarge: string;
  readonly zeroAgain: string;
  readonly zeroForget: string;
  readonly zeroStep: (step: number) => string;
}
