import { useState } from "react";
import { Button } from "../../../controls/button.js";
import { useWords } from "../../../words/use-words.js";
import type { CasePageProps } from "../../case-page.js";
import { saveFile } from "../../report/save-file.js";
import styles from "../record-page.module.css";
import { dropRecording } from "../recording-entry.js";
import { type RecordingFile, recordingFile } from "../recording-file.js";
import { recordWords } from "../words/record-catalogue.js";
import { KeptVerdict } from "./kept-verdict.js";
import type { KeptFiles } from "./use-shelf.js";

export interface KeptListProps extends Pick<CasePageProps, "document" | "edit" | "settings"> {
  readonly kept: KeptFiles;
  readonly onOpen: (file: RecordingFile) => void;
}

/** What was recorded before: on this device, and in the case with what was found. */
export function KeptList({ document, edit, settings, kept, onOpen }: KeptListProps) {
  const words = useWords(recordWords).source;
  const [asked, ask] = useState<string | null>(null);
  const { recordings = [] } = document;
  const names = [...new Set([...recordings.map(({ file }) => file), ...kept.names])];
  if (names.length === 0) return null;
  const open = async (name: string): Promise<void> => {
    const content = await kept.open(name);
    if (content) onOpen(recordingFile(name, content, recordings.find(({ file }) => file === name)?.recordedAt ?? null, true));
  };
  const save = async (name: string): Promise<void> => {
    const content = await kept.open(name);
    if (content) saveFile(name, content);
  };
  const remove = (name: string): void => {
    ask(null);
    edit(dropRecording(name));
    void kept.remove(name);
  };
  return (
    <div className={styles.stack}>
      <h3>{recordings.length > 0 ? words.keptInCase : words.kept}</h3>
      {names.map((name) => {
        const isHere = kept.names.includes(name);
        return (
          <div key={name} className={styles.fileRow}>
            <span className={styles.fileName}>{name}</span>
            <KeptVerdict heard={recordings.find(({ file }) => file === name)?.heard} document={document} settings={settings} />
            {isHere ? null : <p className={styles.quiet}>{words.notHere}</p>}
            {asked === name ? (
              <div className={styles.buttons}>
                <Button kind="danger" onPress={() => remove(name)}>
                  {words.removeSure}
                </Button>
                <Button onPress={() => ask(null)}>{words.removeNo}</Button>
              </div>
            ) : (
              <div className={styles.buttons}>
                {isHere ? <Button onPress={() => void open(name)}>{words.openAgain}</Button> : null}
                {isHere ? <Button onPress={() => void save(name)}>{words.save}</Button> : null}
                <Button kind="quiet" onPress={() => ask(name)}>
                  {words.remove}
                </Button>
              </div>
            )}
          </div>
        );
      })}
    </div>
  );
}
