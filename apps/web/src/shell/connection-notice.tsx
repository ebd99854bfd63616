import { useSyncExternalStore } from "react";
import { LinkButton } from "../controls/link-button.js";
import { sync } from "../device/device.js";
import { useWords } from "../words/use-words.js";
import { Notice } from "./notice.js";
import { shellWords } from "./shell-words.js";

/** Says when the server cannot be reached, and what waits for it. */
export function ConnectionNotice() {
  const words = useWords(shellWords);
  const { connection, waiting } = useSyncExternalStore(sync.subscribe, sync.status);
  if (connection === "not-paired") {
    return (
      <Notice tone="doubt" action={<LinkButton to="/pair">{words.letIn}</LinkButton>}>
        {words.notPaired}
      </Notice>
    );
  }
  if (connection !== "unreachable") return null;
  return <Notice tone="doubt">{waiting > 0 ? words.offlineWaiting(waiting) : words.offline}</Notice>;
}
