import type { Case } from "@halfturn/casefile";
import { useEffect, useState } from "react";
import { taughtBy } from "../../worker/worker-client.js";
import styles from "./correct-page.module.css";
import type { CorrectionView } from "./correction-view.js";
import { gaugedSince } from "./plan-ground.js";

type Taught = Awaited<ReturnType<typeof taughtBy>>;

/** What the plans take from corrections that were gauged again; nothing where none was. */
export const TaughtNote = ({ document, view }: { readonly document: Case; readonly view: CorrectionView }) => {
  const taught = useTaught(document);
  const { correction } = view.catalogue;
  if (!taught || taught.kind === "nothing") return null;
  if (taught.kind === "learned") return <p className={styles.quiet}>{correction.learned(taught.from.length, taught.geometry.readings)}</p>;
  return (
    <div className={styles.doubt}>
      <p>{correction.notLearned}</p>
      <ul className={styles.list}>
        {taught.lookAt.map((code) => (
          <li key={code}>{correction.looks[code]}</li>
        ))}
      </ul>
    </div>
  );
};

function useTaught(document: Case): Taught | null {
  const [taught, setTaught] = useState<Taught | null>(null);
  const asks = (document.corrections ?? []).some((correction) => gaugedSince(document, correction));
  useEffect(() => {
    if (!asks) return setTaught(null);
    let wanted = true;
    const keep = (made: Taught | null) => {
      if (wanted) setTaught(made);
    };
    taughtBy(document).then(keep, () => keep(null));
    return () => {
      wanted = false;
    };
  }, [document, asks]);
  return taught;
}
