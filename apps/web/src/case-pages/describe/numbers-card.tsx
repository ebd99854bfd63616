import { type CaseVehicle, SHORTEST_MM } from "@halfturn/casefile";
import { memo } from "react";
import { Card } from "../../controls/card.js";
import { Fields } from "../../controls/fields.js";
import { Fold } from "../../controls/fold.js";
import { TextEntry } from "../../controls/text-entry.js";
import { MeasureField } from "../../measure/measure-field.js";
import { TogetherFields } from "../../measure/together-fields.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { describeWords } from "./describe-words.js";
import { changed, editVehicle, orGone } from "./edit-case.js";
import { GearList } from "./gear-list.js";

const RATIO = { above: 0, maximum: 100 };
const OFFSET = { minimum: -20_000, maximum: 20_000 };
const CYLINDERS = { minimum: 1, maximum: 24 };
const SHAFT = { above: 0, maximum: 20_000 };
const CIRCUMFERENCE = { minimum: SHORTEST_MM, maximum: 20_000 };

const PLACES = ["pivotForwardMm", "pivotUpMm", "mountForwardMm", "mountUpMm"] as const;

type Tyre = NonNullable<CaseVehicle["tyre"]>;

export interface NumbersCardProps extends Pick<CasePageProps, "edit"> {
  readonly vehicle: CaseVehicle | undefined;
}

const NOTHING: CaseVehicle = {};

export const NumbersCard = memo(function NumbersCard({ vehicle = NOTHING, edit }: NumbersCardProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  const tyre: { readonly size?: string; readonly rollingCircumferenceMm?: number } = vehicle.tyre ?? {};
  const tyreWith = (next: { readonly size?: string | null; readonly rollingCircumferenceMm?: number | null }) =>
    edit(editVehicle({ tyre: orGone(changed(tyre, next)) as Tyre | null }));
  const ratio = (key: "axleRatio" | "transferRatio") => (
    <MeasureField
      label={names[key]}
      measure="number"
      bounds={RATIO}
      value={vehicle[key] ?? null}
      onChange={(value) => edit(editVehicle({ [key]: value }))}
    />
  );
  return (
    <Card title={words.numbers}>
      <p>{words.numbersHelp}</p>
      <Fields>
        {ratio("axleRatio")}
        {ratio("transferRatio")}
        <TextEntry label={names.size} help={words.tyreHelp} value={tyre.size ?? ""} onChange={(size) => tyreWith({ size })} />
        <MeasureField
          label={names.rollingCircumferenceMm}
          help={words.circumferenceHelp}
          measure="length"
          bounds={CIRCUMFERENCE}
          value={tyre.rollingCircumferenceMm ?? null}
          onChange={(rollingCircumferenceMm) => tyreWith({ rollingCircumferenceMm })}
        />
        <MeasureField
          label={names.maxShaftSpeedRpm}
          help={words.maxSpeedHelp}
          measure="shaft-speed"
          bounds={SHAFT}
          value={vehicle.maxShaftSpeedRpm ?? null}
          onChange={(maxShaftSpeedRpm) => edit(editVehicle({ maxShaftSpeedRpm }))}
        />
        <MeasureField
          label={names.cylinders}
          measure="count"
          bounds={CYLINDERS}
          value={vehicle.cylinders ?? null}
          onChange={(cylinders) => edit(editVehicle({ cylinders }))}
        />
      </Fields>
      <Fold title={names.gears}>
        <GearList gears={vehicle.gears ?? []} onChange={(gears) => edit(editVehicle({ gears: gears.length === 0 ? null : gears }))} />
      </Fold>
      <Fold title={words.powertrain}>
        <p>{words.powertrainHelp}</p>
        <TogetherFields
          part="powertrain"
          fields={PLACES.map((key) => ({ key, label: names[key], measure: "length", bounds: OFFSET }))}
          value={vehicle.powertrain ?? null}
          onChange={(powertrain) => edit(editVehicle({ powertrain: powertrain && { ...vehicle.powertrain, ...powertrain } }))}
        />
      </Fold>
    </Card>
  );
});
