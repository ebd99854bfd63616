import { TextEntry } from "../../controls/text-entry.js";
import { useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { describeWords } from "./describe-words.js";

/** Who complains of what, on which vehicle, and how its drivelines are built. */
export function DescribePage({ document, edit }: CasePageProps) {
  const words = useWords(describeWords);
  return (
    <>
      <TextEntry label={words.title} value={document.title} onChange={(title) => edit((before) => ({ ...before, title }))} />
      <TextEntry
        label={words.vehicle}
        value={document.vehicle?.label ?? ""}
        onChange={(label) => edit((before) => ({ ...before, vehicle: { ...before.vehicle, label } }))}
      />
    </>
  );
}
