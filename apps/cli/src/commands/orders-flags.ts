import type { Language, Units } from "@halfturn/words";

export interface OrdersFlags {
  /** Road speed, km/h. */
  readonly speed: number;
  readonly gear?: string;
  /** Turns of the wheel that a recording holds. */
  readonly turns?: number;
  readonly json: boolean;
  readonly units?: Units;
  readonly lang?: Language;
}
