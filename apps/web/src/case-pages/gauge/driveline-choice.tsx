import type { Case } from "@halfturn/casefile";
import { catalogueOf, drivelineName } from "@halfturn/words";
import { Choice } from "../../controls/choice.js";
import { useLanguage } from "../../words/use-words.js";

interface DrivelineChoiceProps {
  readonly document: Case;
  readonly label: string;
  readonly driveline: number;
  readonly onDriveline: (driveline: number) => void;
}

/** Which driveline is read; nothing where the vehicle has one only. */
export const DrivelineChoice = ({ document, label, driveline, onDriveline }: DrivelineChoiceProps) => {
  const catalogue = catalogueOf(useLanguage());
  if (document.drivelines.length < 2) return null;
  return (
    <Choice
      label={label}
      value={String(driveline)}
      options={document.drivelines.map((_, k) => ({ value: String(k), label: drivelineName(document, k, catalogue) }))}
      onChange={(value) => onDriveline(Number(value))}
    />
  );
};
