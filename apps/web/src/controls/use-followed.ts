import { startTransition, useEffect, useState } from "react";
import { afterPaint } from "./after-paint.js";

/**
 * A value as it was, until the frame with the newest is out: what is drawn from it follows as the device can. React's own deferred value may be worked on before that
 * frame, and then holds it up.
 */
export function useFollowed<Value>(value: Value): Value {
  const [followed, follow] = useState<Value>(() => value);
  useEffect(() => afterPaint(() => startTransition(() => follow(() => value))), [value]);
  return followed;
}
