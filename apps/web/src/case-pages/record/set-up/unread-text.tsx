import { catalogueOf, type Language, recordingFaultText } from "@halfturn/words";
import { useWords } from "../../../words/use-words.js";
import { MOST_SAMPLES } from "../../../worker/listening/fits-here.js";
import type { ReadResult } from "../../../worker/listening/listening-types.js";
import { recordWords } from "../words/record-catalogue.js";

export interface UnreadTextProps {
  readonly fault: ReadResult & { readonly ok: false };
  readonly language: Language;
}

/** Why channels could not be read; where it is for want of room, what holds the samples here, and why. */
export function UnreadText({ fault, language }: UnreadTextProps) {
  const words = useWords(recordWords).setUp;
  const { recording, numbers } = catalogueOf(language);
  const { inMemory } = fault;
  return (
    <div role="alert">
      <p>{recordingFaultText(recording, fault, numbers)}</p>
      {fault.code === "recording.too-many" && inMemory !== null ? (
        <p>
          {words.inMemory[inMemory](numbers.plain(MOST_SAMPLES, 0))} {words.inMemoryRefused[inMemory]}
        </p>
      ) : null}
    </div>
  );
}
