import { useState } from "react";
import type { CasePageProps } from "../case-page.js";
import { SourceCard } from "./get/source-card.js";
import { useShelf } from "./get/use-shelf.js";
import type { RecordingFile } from "./recording-file.js";
import { OpenRecording } from "./set-up/open-recording.js";
import { TurningCard } from "./turning/turning-card.js";

/** Which rotating part a vibration follows: by the speed at which it is felt, and by a recording. */
export function RecordPage({ document, edit, settings }: CasePageProps) {
  const kept = useShelf(document.id);
  const [file, setFile] = useState<RecordingFile | null>(null);
  return (
    <>
      <TurningCard document={document} edit={edit} settings={settings} />
      <SourceCard document={document} edit={edit} settings={settings} kept={kept} onOpen={setFile} />
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
    </>
  );
}
