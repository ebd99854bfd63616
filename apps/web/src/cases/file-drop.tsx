import { type DragEvent, type ReactNode, useRef, useState } from "react";
import { Button } from "../controls/button.js";
import { Icon } from "../controls/icon.js";
import { useWords } from "../words/use-words.js";
import { casesWords } from "./cases-words.js";
import styles from "./file-drop.module.css";

export interface FileDropProps {
  readonly onFile: (file: File) => void;
  readonly children: (pick: ReactNode) => ReactNode;
}

/** Takes a case file that is dropped on the page, or picked. */
export function FileDrop({ onFile, children }: FileDropProps) {
  const words = useWords(casesWords);
  const input = useRef<HTMLInputElement>(null);
  const [over, setOver] = useState(false);
  const take = (files: FileList | null) => {
    const file = files?.[0];
    if (file) onFile(file);
  };
  const drag = (is: boolean) => (event: DragEvent) => {
    if (!event.dataTransfer.types.includes("Files")) return;
    event.preventDefault();
    setOver(is);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is another way; the button does the same by keyboard
    <div
      className={styles.area}
      onDragOver={drag(true)}
      onDragLeave={drag(false)}
      onDrop={(event) => {
        drag(false)(event);
        take(event.dataTransfer.files);
      }}
    >
      {children(
        <>
          <input
            ref={input}
            type="file"
            accept=".json,application/json"
            className={styles.input}
            aria-label={words.openFile}
            tabIndex={-1}
            onChange={(event) => {
              take(event.target.files);
              event.target.value = "";
            }}
          />
          <Button size="large" onPress={() => input.current?.click()}>
            <Icon name="file" /> {words.openFile}
          </Button>
        </>,
      )}
      {over ? <p className={styles.over}>{words.dropHere}</p> : null}
    </div>
  );
}
