import type { CaseJoint } from "@halfturn/casefile";
import { catalogueOf } from "@halfturn/words";
import { Choice } from "../../controls/choice.js";
import { MeasureField } from "../../measure/measure-field.js";
import { fieldNames } from "../../words/field-names.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import { describeWords } from "./describe-words.js";
import { type Changes, changed } from "./edit-case.js";
import styles from "./part.module.css";

const KINDS = ["cross", "double-cross", "ball", "flexible"] as const satisfies readonly CaseJoint["kind"][];
const OFFSET = { minimum: 0, maximum: 20_000 };
const STATED = { above: 0, below: 90 };

type Support = NonNullable<CaseJoint["support"]>;

export interface JointFieldsProps {
  readonly name: string;
  readonly joint: CaseJoint;
  /** Between two sections, where a support bearing may hang. */
  readonly isBetween: boolean;
  readonly onChange: (changes: Changes<CaseJoint>) => void;
}

export function JointFields({ name, joint, isBetween, onChange }: JointFieldsProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  const { labels } = catalogueOf(useLanguage());
  return (
    <section className={styles.part}>
      <h3>{name}</h3>
      <Choice
        label={names.kind}
        options={KINDS.map((kind) => ({ value: kind, label: labels.jointKinds[kind] }))}
        value={joint.kind}
        onChange={(kind) => onChange({ kind })}
      />
      {joint.kind === "cross" ? null : (
        <MeasureField
          label={names.statedAngleDeg}
          measure="angle"
          bounds={STATED}
          value={joint.statedAngleDeg ?? null}
          onChange={(statedAngleDeg) => onChange({ statedAngleDeg })}
        />
      )}
      {isBetween ? (
        <Choice
          label={words.support}
          options={[
            { value: "with", label: words.withSupport },
            { value: "without", label: words.withoutSupport },
          ]}
          value={joint.support ? "with" : "without"}
          onChange={(answer) => onChange({ support: answer === "with" ? (joint.support ?? {}) : null })}
        />
      ) : null}
      {joint.support ? <SupportFields support={joint.support} names={names} onChange={(support) => onChange({ support })} /> : null}
    </section>
  );
}

interface SupportFieldsProps {
  readonly support: Support;
  readonly names: { readonly bearingMounted: string; readonly bearingToJointMm: string; readonly bearingIs: string };
  readonly onChange: (support: Support) => void;
}

function SupportFields({ support, names, onChange }: SupportFieldsProps) {
  const words = useWords(describeWords);
  return (
    <>
      <Choice
        label={names.bearingMounted}
        options={[
          { value: "below-crossmember", label: words.below },
          { value: "above-crossmember", label: words.above },
        ]}
        value={support.bearingMounted ?? null}
        onChange={(bearingMounted) => onChange({ ...support, bearingMounted })}
      />
      <MeasureField
        label={names.bearingToJointMm}
        measure="length"
        bounds={OFFSET}
        value={support.bearingToJointMm ?? null}
        onChange={(bearingToJointMm) => onChange(changed(support, { bearingToJointMm }))}
      />
      <Choice
        label={names.bearingIs}
        options={[
          { value: "source-side", label: words.sourceSide },
          { value: "driven-side", label: words.drivenSide },
        ]}
        value={support.bearingIs ?? null}
        onChange={(bearingIs) => onChange({ ...support, bearingIs })}
      />
    </>
  );
}
