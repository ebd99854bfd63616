/** What turns at a felt speed. */
export interface TurningWords {
  readonly title: string;
  readonly help: string;
  readonly speed: string;
  readonly frequency: string;
  readonly rate: (turns: string, perMinute: string) => string;
  readonly order: (order: string, cause: string) => string;
  readonly there: (frequency: string, speed: string) => string;
  readonly nothingThere: (frequency: string, speed: string) => string;
  readonly rings: string;
  readonly moves: (speed: string, frequency: string) => string;
  readonly stays: string;
  readonly noSpeedParts: string;
}
