import { useEffect, useRef, useState } from "react";
import { useKeptDraft } from "../device/kept-draft.js";
import { useSettings } from "../settings/settings-context.js";
import { isLeftText, type LeftText, leftState } from "./left-text.js";
import { type Measure, shownAs } from "./measures.js";
import { type Bounds, type MeasureFault, readMeasure } from "./read-measure.js";

/** A text that reads as a value, the way it was typed. */
interface Typing {
  readonly text: string;
  readonly of: number | null;
}

export interface MeasureTextInput {
  readonly part: string | undefined;
  readonly measure: Measure;
  readonly value: number | null;
  readonly bounds: Bounds;
  readonly onChange: (value: number | null) => void;
}

export interface MeasureText {
  /** What stands in the field as it was typed; null where the value itself does. */
  readonly text: string | null;
  readonly fault: MeasureFault | null;
  /** What was typed and never kept, where the case has another value by now, or could have this one. */
  readonly beside: LeftText | null;
  readonly type: (text: string) => void;
  readonly blur: () => void;
  /** Puts what stands beside the field back into it, or takes it away. */
  readonly useBeside: () => void;
  readonly forgetBeside: () => void;
}

/** What is being typed for a value: it goes into the case as soon as it can be read, and stays as it was typed where it cannot. */
export function useMeasureText({ part, measure, value, bounds, onChange }: MeasureTextInput): MeasureText {
  const { settings } = useSettings();
  const [typing, setTyping] = useState<Typing | null>(null);
  // A bare number means something else in other units: what was typed in these waits for them.
  const [left, leave] = useKeptDraft(part === undefined ? null : `${part} ${shownAs(measure, settings.units).chip}`, isLeftText);
  const before = useRef(value);
  const read = left && readMeasure(left.text, measure, settings.units, bounds);
  const canBeKept = read?.ok === true;
  const state = left && leftState(left, value, canBeKept);
  const inField = state === "in-field" ? left : null;
  const isUndone = state === "undone";
  // biome-ignore lint/correctness/useExhaustiveDependencies: leaving is a new function each time, and always of this field
  useEffect(() => {
    if (isUndone) leave(null);
  }, [isUndone]);
  const type = (text: string): void => {
    const now = readMeasure(text, measure, settings.units, bounds);
    if (!now.ok) {
      setTyping(null);
      leave({ text, of: value, was: before.current });
      return;
    }
    setTyping({ text, of: now.value });
    if (left) leave(null);
    if (Object.is(now.value, value)) return;
    before.current = value;
    onChange(now.value);
  };
  // Once the case has moved on (an undo, another device), what was typed before is out of date.
  const shown = inField ?? (typing && Object.is(typing.of, value) ? typing : null);
  return {
    text: shown?.text ?? null,
    fault: inField && read && !read.ok ? read.fault : null,
    beside: state === "beside" ? left : null,
    type,
    blur: () => setTyping(null),
    useBeside: () => {
      if (left === null) return;
      if (canBeKept) type(left.text);
      else leave({ text: left.text, of: value, was: value });
    },
    forgetBeside: () => leave(null),
  };
}
