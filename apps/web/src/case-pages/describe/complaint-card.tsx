import type { CaseComplaint, CaseVehicle } from "@halfturn/casefile";
import { memo } from "react";
import { Card } from "../../controls/card.js";
import { Choice } from "../../controls/choice.js";
import { Fields } from "../../controls/fields.js";
import { TextEntry } from "../../controls/text-entry.js";
import { Toggles } from "../../controls/toggles.js";
import { MeasureField } from "../../measure/measure-field.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { describeWords, FEELS, LOADS } from "./describe-words.js";
import { editComplaint, editVehicle } from "./edit-case.js";

const ROAD = { minimum: 0, maximum: 400 };
const UNKNOWN = "";

/** An end of the speed band: the band is kept low end first, and a single end stands for both. */
const bandWith = (band: readonly [number, number] | undefined, end: 0 | 1, value: number | null): readonly [number, number] | null => {
  if (value === null) return null;
  const other = band?.[1 - end] ?? value;
  return end === 0 ? [value, Math.max(value, other)] : [Math.min(value, other), value];
};

export interface ComplaintCardProps extends Pick<CasePageProps, "edit"> {
  readonly title: string;
  readonly vehicle: CaseVehicle | undefined;
  readonly complaint: CaseComplaint | undefined;
}

const NOTHING: CaseComplaint = {};

export const ComplaintCard = memo(function ComplaintCard({ title, vehicle, complaint = NOTHING, edit }: ComplaintCardProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  const band = complaint.speedKmh;
  const feel = complaint.feel ?? [];
  const gears = (vehicle?.gears ?? []).map(({ label }) => ({ value: label, label }));
  const unknown = { value: UNKNOWN, label: words.notKnown };
  const loads = LOADS.map((load) => ({ value: load as string, label: words.loads[load] }));
  const others = (known: readonly string[], value: string | undefined) =>
    value === undefined || known.includes(value) ? [] : [{ value, label: value }];
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
      <Fields>
        {([0, 1] as const).map((end) => (
          <MeasureField
            key={end}
            label={`${names.speedKmh}: ${end === 0 ? words.from : words.to}`}
            measure="road-speed"
            bounds={ROAD}
            value={band?.[end] ?? null}
            onChange={(value) => edit(editComplaint({ speedKmh: bandWith(band, end, value) }))}
          />
        ))}
      </Fields>
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
    </Card>
  );
});
