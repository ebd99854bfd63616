import { Card } from "../../controls/card.js";
import { Fold } from "../../controls/fold.js";
import { TextEntry } from "../../controls/text-entry.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { editNotes } from "./edit-case.js";
import { LimitsFields } from "./limits-fields.js";
import { StatesList } from "./states-list.js";
import { moreWords } from "./words/more-words.js";

/** What only some cases need, closed until it is asked for. */
export function MoreCard({ document, edit }: Pick<CasePageProps, "document" | "edit">) {
  const words = useWords(moreWords);
  const names = useWords(fieldNames);
  return (
    <Card title={words.title}>
      <div>
        <Fold title={names.states}>
          <StatesList document={document} edit={edit} />
        </Fold>
        <Fold title={names.limits}>
          <LimitsFields limits={document.limits} edit={edit} />
        </Fold>
        <Fold title={words.notes}>
          <TextEntry
            label={words.notes}
            help={words.notesHelp}
            long
            value={document.notes ?? ""}
            onChange={(notes) => edit(editNotes(notes))}
          />
        </Fold>
      </div>
    </Card>
  );
}
