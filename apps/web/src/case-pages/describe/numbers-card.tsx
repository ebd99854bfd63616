import type { CaseVehicle } from "@halfturn/casefile";
import { memo } from "react";
import { Card } from "../../controls/card.js";
import { Fold } from "../../controls/fold.js";
import { TextEntry } from "../../controls/text-entry.js";
import { TogetherFields } from "../../measure/together-fields.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { AccessoryList } from "./accessory-list.js";
import { BOUNDS } from "./bounds.js";
import { changed, editVehicle, orGone } from "./edit-case.js";
import { GearList } from "./gear-list.js";
import { NumberFields } from "./number-fields.js";
import { describeWords } from "./words/describe-words.js";
import { fieldHelp } from "./words/field-help.js";
import { moreWords } from "./words/more-words.js";

const PLACES = ["pivotForwardMm", "pivotUpMm", "mountForwardMm", "mountUpMm"] as const;

type Tyre = NonNullable<CaseVehicle["tyre"]>;

export interface NumbersCardProps extends Pick<CasePageProps, "edit"> {
  readonly vehicle: CaseVehicle | undefined;
}

const NOTHING: CaseVehicle = {};

export const NumbersCard = memo(function NumbersCard({ vehicle = NOTHING, edit }: NumbersCardProps) {
  const words = useWords(describeWords);
  const more = useWords(moreWords);
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  const tyre: { readonly size?: string; readonly rollingCircumferenceMm?: number } = vehicle.tyre ?? {};
  const tyreWith = (next: { readonly size?: string | null; readonly rollingCircumferenceMm?: number | null }) =>
    edit(editVehicle({ tyre: orGone(changed(tyre, next)) as Tyre | null }));
  return (
    <Card title={words.numbers}>
      <p>{words.numbersHelp}</p>
      <NumberFields
        fields={[
          { key: "axleRatio", measure: "number", bounds: BOUNDS.ratio },
          { key: "transferRatio", measure: "number", bounds: BOUNDS.ratio },
        ]}
        values={vehicle}
        onChange={(changes) => edit(editVehicle(changes))}
      />
      <TextEntry label={names.size} help={words.tyreHelp} value={tyre.size ?? ""} onChange={(size) => tyreWith({ size })} />
      <NumberFields
        fields={[{ key: "rollingCircumferenceMm", measure: "length", bounds: BOUNDS.distance, help: words.circumferenceHelp }]}
        values={tyre}
        onChange={tyreWith}
      />
      <NumberFields
        fields={[
          { key: "maxShaftSpeedRpm", measure: "shaft-speed", bounds: BOUNDS.shaftSpeed, help: words.maxSpeedHelp },
          { key: "cylinders", measure: "count", bounds: BOUNDS.cylinders },
        ]}
        values={vehicle}
        onChange={(changes) => edit(editVehicle(changes))}
      />
      <Fold title={more.gears}>
        <GearList gears={vehicle.gears ?? []} onChange={(gears) => edit(editVehicle({ gears: gears.length === 0 ? null : gears }))} />
        <NumberFields
          fields={[{ key: "slipShare", measure: "share", bounds: BOUNDS.slipShare }]}
          values={vehicle}
          onChange={(changes) => edit(editVehicle(changes))}
        />
      </Fold>
      <Fold title={more.accessories}>
        <p>{more.accessoriesHelp}</p>
        <AccessoryList
          accessories={vehicle.accessories ?? []}
          onChange={(accessories) => edit(editVehicle({ accessories: accessories.length === 0 ? null : accessories }))}
        />
      </Fold>
      <Fold title={words.powertrain}>
        <p>{words.powertrainHelp}</p>
        <TogetherFields
          part="powertrain"
          fields={PLACES.map((key) => ({ key, label: names[key], help: help[key], measure: "length", bounds: BOUNDS.offset }))}
          value={vehicle.powertrain ?? null}
          onChange={(powertrain) => edit(editVehicle({ powertrain: powertrain && { ...vehicle.powertrain, ...powertrain } }))}
        />
      </Fold>
    </Card>
  );
});
