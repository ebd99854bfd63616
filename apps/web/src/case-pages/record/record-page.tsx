import { useEffect, useRef, useState } from "react";
import type { CasePageProps } from "../case-page.js";
import { SourceCard } from "./get/source-card.js";
import { useShelf } from "./get/use-shelf.js";
import styles from "./record-page.module.css";
import type { RecordingFile } from "./recording-file.js";
import { OpenRecording } from "./set-up/open-recording.js";
import { TurningCard } from "./turning/turning-card.js";

/** Which rotating part a vibration follows: by the speed at which it is felt, and by a recording. */
export function RecordPage({ document, edit, settings }: CasePageProps) {
  const kept = useShelf(document.id);
  const [file, setFile] = useState<RecordingFile | null>(null);
  const opened = useRef<HTMLDivElement>(null);
  // What was opened stands below what opened it, often out of sight on a phone.
  useEffect(() => {
    if (file) opened.current?.scrollIntoView({ block: "start" });
  }, [file]);
  return (
    <>
      <TurningCard document={document} edit={edit} settings={settings} />
      <SourceCard document={document} edit={edit} settings={settings} kept={kept} onOpen={setFile} />
      <div ref={opened} className={styles.opened}>
        {file ? (
          <OpenRecording
            key={file.key}
            file={file}
            document={document}
            edit={edit}
            settings={settings}
            onKeep={({ name, content, isKept }) => {
              if (!isKept) void kept.keep(name, content);
            }}
          />
        ) : null}
      </div>
    </>
  );
}
