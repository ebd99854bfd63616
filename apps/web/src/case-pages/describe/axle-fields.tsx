import type { CaseAxle, RunsToward } from "@halfturn/casefile";
import { Choice } from "../../controls/choice.js";
import { Fold } from "../../controls/fold.js";
import { DirectedField } from "../../measure/directed-field.js";
import { TogetherFields } from "../../measure/together-fields.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { atLeast, atMost, BOUNDS } from "./bounds.js";
import type { Changes } from "./edit-case.js";
import { NumberFields } from "./number-fields.js";
import { SuspensionFields } from "./suspension-fields.js";
import { axleWords } from "./words/axle-words.js";
import { describeWords } from "./words/describe-words.js";
import { fieldHelp } from "./words/field-help.js";

export interface AxleFieldsProps {
  readonly axle: CaseAxle;
  readonly runs: RunsToward;
  readonly onChange: (changes: Changes<CaseAxle>) => void;
}

/** What a wedge, a ride height or torque does to the pinion depends on these. */
export function AxleFields({ axle, runs, onChange }: AxleFieldsProps) {
  const words = useWords(describeWords);
  const guide = useWords(axleWords);
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  // A pad leans as a shaft does: plus where its edge toward the driven end is the lower one.
  const [plus, minus] = runs === "rearward" ? [guide.rearLower, guide.frontLower] : [guide.frontLower, guide.rearLower];
  return (
    <>
      <NumberFields
        fields={[
          { key: "centreToJointMm", measure: "length", bounds: BOUNDS.distance },
          { key: "jointAboveCentreMm", measure: "length", bounds: BOUNDS.offset },
        ]}
        values={axle}
        onChange={onChange}
      />
      <Choice
        label={names.springPosition}
        options={[
          { value: "above-axle", label: words.aboveAxle },
          { value: "below-axle", label: words.belowAxle },
        ]}
        value={axle.springPosition ?? null}
        onChange={(springPosition) => onChange({ springPosition })}
      />
      <DirectedField
        part="padInclinationDeg"
        label={names.padInclinationDeg}
        help={help.padInclinationDeg}
        measure="angle"
        bounds={BOUNDS.magnitude}
        value={axle.padInclinationDeg ?? null}
        words={{ plus, minus }}
        onChange={(padInclinationDeg) => onChange({ padInclinationDeg })}
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
        <NumberFields
          fields={[
            { key: "casterDeg", measure: "angle", bounds: BOUNDS.leaning },
            { key: "casterMinimumDeg", measure: "angle", bounds: atMost(BOUNDS.leaning, axle.casterMaximumDeg) },
            { key: "casterMaximumDeg", measure: "angle", bounds: atLeast(BOUNDS.leaning, axle.casterMinimumDeg) },
          ]}
          values={axle}
          onChange={onChange}
        />
      ) : null}
      <Fold title={guide.torque}>
        <p>{words.windUpHelp}</p>
        <TogetherFields
          part="windUpDeg"
          fields={[
            { key: "drive", label: names.windUpDrive, help: help.windUpDrive, measure: "angle", bounds: BOUNDS.magnitude },
            { key: "coast", label: names.windUpCoast, help: help.windUpCoast, measure: "angle", bounds: BOUNDS.magnitude },
          ]}
          value={axle.windUpDeg ?? null}
          onChange={(windUpDeg) => onChange({ windUpDeg: windUpDeg && { ...axle.windUpDeg, ...windUpDeg } })}
        />
      </Fold>
      <Fold title={guide.guided}>
        <p>{guide.guidedHelp}</p>
        <SuspensionFields suspension={axle.suspension} onChange={(suspension) => onChange({ suspension })} />
      </Fold>
    </>
  );
}
