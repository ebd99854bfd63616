import { catalogueOf, cautionsOf } from "@halfturn/words";
import { type DragEvent, useState } from "react";
import { FileTrigger } from "react-aria-components";
import { Button } from "../../../controls/button.js";
import { Card } from "../../../controls/card.js";
import { Fold } from "../../../controls/fold.js";
import { useWords } from "../../../words/use-words.js";
import type { CasePageProps } from "../../case-page.js";
import { PhoneRecorder } from "../phone/phone-recorder.js";
import styles from "../record-page.module.css";
import { type RecordingFile, recordingFile } from "../recording-file.js";
import { recordWords } from "../words/record-catalogue.js";
import { KeptList } from "./kept-list.js";
import type { KeptFiles } from "./use-shelf.js";

export interface SourceCardProps extends Pick<CasePageProps, "document" | "edit" | "settings"> {
  readonly kept: KeptFiles;
  readonly onOpen: (file: RecordingFile) => void;
}

/** Where a recording comes from: a file, this device, or what was kept before. */
export function SourceCard({ document, edit, settings, kept, onOpen }: SourceCardProps) {
  const words = useWords(recordWords).source;
  const { cautions } = catalogueOf(settings.language);
  const [isOver, setOver] = useState(false);
  const take = (files: FileList | null): void => {
    const file = files?.[0];
    if (file) onOpen(recordingFile(file.name, file, new Date(file.lastModified).toISOString()));
  };
  const dropped = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    take(event.dataTransfer.files);
  };
  const [driver, ...others] = cautionsOf(cautions, "record");
  return (
    <Card title={words.title}>
      <p>{words.help}</p>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: dropping is a short cut; the button inside does the same by touch and by keys */}
      <div
        className={`${styles.drop} ${isOver ? styles.over : ""}`}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={dropped}
      >
        <FileTrigger onSelect={take}>
          <Button kind="main">{words.choose}</Button>
        </FileTrigger>
        <p className={styles.quiet}>{words.drop}</p>
      </div>
      <h3>{words.phone.title}</h3>
      <div className={styles.caution}>
        <p>
          <strong>{driver}</strong>
        </p>
        <Fold title={words.cautions}>
          <ul className={styles.plainList}>
            {[...others, cautions.defersTo].map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </Fold>
      </div>
      <PhoneRecorder
        caseId={document.id}
        settings={settings}
        onTaken={async (file) => {
          const isLasting = await kept.keep(file.name, file.content);
          onOpen({ ...file, isKept: true });
          return isLasting;
        }}
      />
      {kept.lasting === false && kept.names.length > 0 ? <p role="alert">{words.notKeptOnDevice}</p> : null}
      <KeptList document={document} edit={edit} settings={settings} kept={kept} onOpen={onOpen} />
    </Card>
  );
}
