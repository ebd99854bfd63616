import type { CaseComplaint, CaseVehicle } from "@halfturn/casefile";
import { memo } from "react";
import { Choice } from "../../controls/choice.js";
import { TextEntry } from "../../controls/text-entry.js";
import { Toggles } from "../../controls/toggles.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { editComplaint } from "./edit-case.js";
import { SpeedBand } from "./speed-band.js";
import { describeWords, FEELS, LOADS } from "./words/describe-words.js";

const UNKNOWN = "";

type Gears = NonNullable<CaseVehicle["gears"]>;

export interface ComplaintFieldsProps extends Pick<CasePageProps, "edit"> {
  readonly complaint: CaseComplaint | undefined;
  readonly gears: Gears | undefined;
}

const NOTHING: CaseComplaint = {};
const NO_GEARS: Gears = [];

/** When it shakes and where; drawn again only when one of these changes, not with every letter of the title. */
export const ComplaintFields = memo(function ComplaintFields({ complaint = NOTHING, gears: known = NO_GEARS, edit }: ComplaintFieldsProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  const feel = complaint.feel ?? [];
  const gears = known.map(({ label }) => ({ value: label, label }));
  const unknown = { value: UNKNOWN, label: words.notKnown };
  const loads = LOADS.map((load) => ({ value: load as string, label: words.loads[load] }));
  const others = (known: readonly string[], value: string | undefined) =>
    value === undefined || known.includes(value) ? [] : [{ value, label: value }];
  return (
    <>
      <SpeedBand band={complaint.speedKmh ?? null} onChange={(speedKmh) => edit(editComplaint({ speedKmh }))} />
      <Toggles
        label={names.feel}
        options={[...FEELS.map((one) => ({ value: one as string, label: words.feels[one] })), ...feel.flatMap((one) => others(FEELS, one))]}
        values={feel}
        onChange={(next) => edit(editComplaint({ feel: next.length === 0 ? null : next }))}
      />
      <Choice
        label={names.load}
        options={[...loads, ...others(LOADS, complaint.load), unknown]}
        value={complaint.load ?? UNKNOWN}
        onChange={(load) => edit(editComplaint({ load }))}
      />
      {gears.length > 0 ? (
        <Choice
          label={names.gear}
          options={[
            ...gears,
            ...others(
              gears.map(({ value }) => value),
              complaint.gear,
            ),
            unknown,
          ]}
          value={complaint.gear ?? UNKNOWN}
          onChange={(gear) => edit(editComplaint({ gear }))}
        />
      ) : (
        <TextEntry label={names.gear} value={complaint.gear ?? ""} onChange={(gear) => edit(editComplaint({ gear }))} />
      )}
      <TextEntry
        label={names.notes}
        help={words.notesHelp}
        long
        value={complaint.notes ?? ""}
        onChange={(notes) => edit(editComplaint({ notes }))}
      />
    </>
  );
});
