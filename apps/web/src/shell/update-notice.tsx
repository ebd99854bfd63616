import { useSyncExternalStore } from "react";
import { Button } from "../controls/button.js";
import { update } from "../device/update.js";
import { useWords } from "../words/use-words.js";
import { Notice } from "./notice.js";
import { shellWords } from "./shell-words.js";

/** A newer version waits until somebody starts it: nothing reloads under a person's hands. */
export function UpdateNotice() {
  const words = useWords(shellWords);
  const ready = useSyncExternalStore(update.subscribe, update.isReady);
  if (!ready) return null;
  return (
    <Notice tone="news" action={<Button onPress={update.start}>{words.updateNow}</Button>}>
      {words.update}
    </Notice>
  );
}
