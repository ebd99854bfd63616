import { examples } from "@halfturn/casefile";
import { Button } from "../controls/button.js";
import { Fold } from "../controls/fold.js";
import { useWords } from "../words/use-words.js";
import styles from "./cases-page.module.css";
import { casesWords } from "./cases-words.js";
import { openExample } from "./open-example.js";

/** Cases to look around in. */
export function Examples({ open, onOpen }: { readonly open: boolean; readonly onOpen: (id: string) => void }) {
  const words = useWords(casesWords);
  const openOne = async (example: (typeof examples)[number]) => {
    const id = await openExample(example);
    if (id !== null) onOpen(id);
  };
  return (
    <Fold key={String(open)} title={words.examples} open={open}>
      <p>{words.examplesHelp}</p>
      <div className={styles.examples}>
        {examples.map((example) => (
          <Button key={example.name} onPress={() => void openOne(example)}>
            {words.example[example.name]}
          </Button>
        ))}
      </div>
    </Fold>
  );
}
