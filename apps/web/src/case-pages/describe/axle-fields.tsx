import { type CaseAxle, SHORTEST_MM } from "@halfturn/casefile";
import { Choice } from "../../controls/choice.js";
import { Fields } from "../../controls/fields.js";
import { MeasureField } from "../../measure/measure-field.js";
import { TogetherFields } from "../../measure/together-fields.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { describeWords } from "./describe-words.js";
import type { Changes } from "./edit-case.js";
import styles from "./part.module.css";

const DISTANCE = { minimum: SHORTEST_MM, maximum: 20_000 };
const OFFSET = { minimum: -20_000, maximum: 20_000 };
const TURN = { minimum: 0, below: 90 };
const CASTER = { above: -90, below: 90 };

export interface AxleFieldsProps {
  readonly axle: CaseAxle;
  readonly onChange: (changes: Changes<CaseAxle>) => void;
}

/** What a wedge, a ride height or torque does to the pinion depends on these. */
export function AxleFields({ axle, onChange }: AxleFieldsProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  return (
    <>
      <Fields>
        <MeasureField
          label={names.centreToJointMm}
          measure="length"
          bounds={DISTANCE}
          value={axle.centreToJointMm ?? null}
          onChange={(centreToJointMm) => onChange({ centreToJointMm })}
        />
        <MeasureField
          label={names.jointAboveCentreMm}
          measure="length"
          bounds={OFFSET}
          value={axle.jointAboveCentreMm ?? null}
          onChange={(jointAboveCentreMm) => onChange({ jointAboveCentreMm })}
        />
      </Fields>
      <Choice
        label={names.springPosition}
        options={[
          { value: "above-axle", label: words.aboveAxle },
          { value: "below-axle", label: words.belowAxle },
        ]}
        value={axle.springPosition ?? null}
        onChange={(springPosition) => onChange({ springPosition })}
      />
      <Choice
        label={names.steered}
        options={[
          { value: "no", label: words.steeredNo },
          { value: "yes", label: words.steeredYes },
        ]}
        value={axle.steered === undefined ? null : axle.steered ? "yes" : "no"}
        onChange={(answer) => onChange({ steered: answer === "yes" })}
      />
      {axle.steered ? (
        <Fields>
          {(["casterDeg", "casterMinimumDeg", "casterMaximumDeg"] as const).map((key) => (
            <MeasureField
              key={key}
              label={names[key]}
              measure="angle"
              bounds={CASTER}
              value={axle[key] ?? null}
              onChange={(value) => onChange({ [key]: value })}
            />
          ))}
        </Fields>
      ) : null}
      <p className={styles.help}>{words.windUpHelp}</p>
      <TogetherFields
        part="windUpDeg"
        fields={[
          { key: "drive", label: names.windUpDrive, measure: "angle", bounds: TURN },
          { key: "coast", label: names.windUpCoast, measure: "angle", bounds: TURN },
        ]}
        value={axle.windUpDeg ?? null}
        onChange={(windUpDeg) => onChange({ windUpDeg })}
      />
    </>
  );
}
