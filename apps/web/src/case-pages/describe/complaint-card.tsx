import { Card } from "../../controls/card.js";
import { TextEntry } from "../../controls/text-entry.js";
import { useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { ComplaintFields } from "./complaint-fields.js";
import { editVehicle } from "./edit-case.js";
import { describeWords } from "./words/describe-words.js";

/** What the case is about: whose vehicle, and what is wrong with it. */
export function ComplaintCard({ document, edit }: Pick<CasePageProps, "document" | "edit">) {
  const words = useWords(describeWords);
  const { title, vehicle, complaint } = document;
  return (
    <Card title={words.complaint}>
      <TextEntry
        label={words.titleField}
        help={words.titleHelp}
        value={title}
        onChange={(next) => edit((before) => ({ ...before, title: next }))}
      />
      <TextEntry
        label={words.vehicleField}
        help={words.vehicleHelp}
        value={vehicle?.label ?? ""}
        onChange={(label) => edit(editVehicle({ label }))}
      />
      <ComplaintFields complaint={complaint} gears={vehicle?.gears} edit={edit} />
    </Card>
  );
}
