import { useState } from "react";
import { Button } from "../../../controls/button.js";
import { useLanguage, useWords } from "../../../words/use-words.js";
import styles from "../record-page.module.css";
import { recordWords } from "../words/record-catalogue.js";
import type { TakeHead } from "./take-store.js";
import type { Takes } from "./use-takes.js";

/** Recordings that were broken off: by a reload, an empty battery, or because the page was left. */
export function LeftTakes({ takes: { left, finishLeft, forget } }: { readonly takes: Takes }) {
  const words = useWords(recordWords).source;
  const language = useLanguage();
  const [asked, ask] = useState<string | null>(null);
  const when = ({ startedAt }: TakeHead): string =>
    new Date(startedAt).toLocaleString(language, { dateStyle: "medium", timeStyle: "short" });
  return left.map((take) => (
    <div key={take.id} className={styles.fileRow} role="status">
      <p>{words.phone.brokenOff(when(take))}</p>
      <div className={styles.buttons}>
        {asked === take.id ? (
          <>
            <Button kind="danger" onPress={() => void forget(take)}>
              {words.phone.dropSure}
            </Button>
            <Button onPress={() => ask(null)}>{words.removeNo}</Button>
          </>
        ) : (
          <>
            <Button kind="main" onPress={() => void finishLeft(take)}>
              {words.phone.finish}
            </Button>
            <Button kind="quiet" onPress={() => ask(take.id)}>
              {words.remove}
            </Button>
          </>
        )}
      </div>
    </div>
  ));
}
