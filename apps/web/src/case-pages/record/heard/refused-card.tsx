import { catalogueOf, problemText, recordingFaultText, signalFaultText } from "@halfturn/words";
import { Card } from "../../../controls/card.js";
import type { Settings } from "../../../device/settings.js";
import { useWords } from "../../../words/use-words.js";
import type { HearResult } from "../../../worker/listening/listening-types.js";
import { recordWords } from "../words/record-catalogue.js";

export interface RefusedCardProps {
  readonly result: HearResult & { readonly ok: false };
  readonly settings: Settings;
}

/** Why nothing can be named, and what to do. */
export function RefusedCard({ result, settings }: RefusedCardProps) {
  const words = useWords(recordWords).heard;
  const catalogue = catalogueOf(settings.language);
  const { recording, vibration, numbers } = catalogue;
  const lines = (): readonly string[] => {
    if (result.why === "recording") return [recordingFaultText(recording, result.fault, numbers)];
    if (result.why === "signal") return [signalFaultText(vibration, result.fault, numbers)];
    return result.problems.map((problem) => problemText(catalogue, problem));
  };
  return (
    <Card title={words.refused}>
      <div role="alert">
        {lines().map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </Card>
  );
}
