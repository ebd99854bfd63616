import type { ChannelScale } from "@halfturn/recordings";
import { hasKeys } from "../../../device/kept-draft.js";
import type { Look } from "../../../worker/listening/listening-types.js";
import type { SpeedForm } from "./speed-form.js";

/** What is filled in about an open recording before it goes into the case. */
export interface SetUp {
  readonly form: SpeedForm;
  /** Label of the gear driven. */
  readonly gear: string | null;
  /** -3 dB of the sensor's filter, Hz. */
  readonly filter: number | null;
}

const FROM: readonly unknown[] = ["column", "tachometer", "constant", "vibration"] satisfies readonly SpeedForm["from"][];
const isNumberOrNull = (value: unknown): value is number | null => value === null || typeof value === "number";
const isTextOrNull = (value: unknown): value is string | null => value === null || typeof value === "string";

const isSpeedForm = (value: unknown): value is SpeedForm =>
  hasKeys(value, "from", "channel", "part", "perTurn", "speed", "slowest", "fastest") &&
  FROM.includes(value.from) &&
  isTextOrNull(value.channel) &&
  typeof value.part === "string" &&
  [value.perTurn, value.speed, value.slowest, value.fastest].every(isNumberOrNull);

export const isSetUp = (value: unknown): value is SetUp =>
  hasKeys(value, "form", "gear", "filter") && isSpeedForm(value.form) && isTextOrNull(value.gear) && isNumberOrNull(value.filter);

export const isScales = (value: unknown): value is readonly ChannelScale[] =>
  Array.isArray(value) && value.every((scale) => hasKeys(scale, "id") && typeof scale.id === "string");

/** Whether what was filled in speaks of channels that the file has. */
export const fitsFile = ({ form: { channel } }: SetUp, look: Look): boolean =>
  channel === null || look.channels.some(({ id }) => id === channel);
