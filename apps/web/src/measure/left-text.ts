import { hasKeys } from "../device/kept-draft.js";

/** A text of a field that reads as no value. */
export interface LeftText {
  readonly text: string;
  /** The value that the case had then, and the one before the last change made in this field. */
  readonly of: number | null;
  readonly was: number | null;
}

const isValue = (value: unknown): value is number | null => value === null || typeof value === "number";

export const isLeftText = (value: unknown): value is LeftText =>
  hasKeys(value, "text", "of", "was") && typeof value.text === "string" && isValue(value.of) && isValue(value.was);

/**
 * in-field: it stands in the field. undone: the change it belonged to was taken back, and it with it. beside: the case has another value by now, which counts; or the
 * text could be kept by now, since what it had to fit was changed, and nobody has asked for that.
 */
export type LeftState = "in-field" | "undone" | "beside";

/** canBeKept: whether the text reads as a value within its bounds now. */
export function leftState({ of, was }: LeftText, value: number | null, canBeKept: boolean): LeftState {
  if (Object.is(of, value)) return canBeKept ? "beside" : "in-field";
  return Object.is(was, value) ? "undone" : "beside";
}
