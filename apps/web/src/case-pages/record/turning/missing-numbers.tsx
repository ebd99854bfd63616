import type { CaseVehicle } from "@halfturn/casefile";
import { Fields } from "../../../controls/fields.js";
import { TextEntry } from "../../../controls/text-entry.js";
import { MeasureField } from "../../../measure/measure-field.js";
import { fieldNames } from "../../../words/field-names.js";
import { useWords } from "../../../words/use-words.js";
import type { CasePageProps } from "../../case-page.js";
import { changed, editVehicle, orGone } from "../../describe/edit-case.js";

const RATIO = { above: 0, maximum: 100 };
const SAMPLE_SIZE = "265/70R17";

/** The two numbers without which nothing is known to turn: they can be given here too. */
export function MissingNumbers({ document: { vehicle = {} }, edit }: Pick<CasePageProps, "document" | "edit">) {
  const names = useWords(fieldNames);
  const tyre: { readonly size?: string } = vehicle.tyre ?? {};
  return (
    <Fields>
      <MeasureField
        part="axleRatio"
        label={names.axleRatio}
        measure="number"
        bounds={RATIO}
        value={vehicle.axleRatio ?? null}
        onChange={(axleRatio) => edit(editVehicle({ axleRatio }))}
      />
      <TextEntry
        label={names.size}
        help={SAMPLE_SIZE}
        value={tyre.size ?? ""}
        onChange={(size) => edit(editVehicle({ tyre: orGone(changed(tyre, { size })) as NonNullable<CaseVehicle["tyre"]> | null }))}
      />
    </Fields>
  );
}
