import type { CaseJoint } from "@halfturn/casefile";
import { catalogueOf } from "@halfturn/words";
import { Choice } from "../../controls/choice.js";
import { DraftScope } from "../../device/draft-scope.js";
import { fieldNames } from "../../words/field-names.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import { BOUNDS, below } from "./bounds.js";
import { CentringFields } from "./centring-fields.js";
import { type Changes, changed } from "./edit-case.js";
import { NumberFields } from "./number-fields.js";
import styles from "./part.module.css";
import { describeWords } from "./words/describe-words.js";

const KINDS = ["cross", "double-cross", "ball", "flexible"] as const satisfies readonly CaseJoint["kind"][];

type Support = NonNullable<CaseJoint["support"]>;

export interface JointFieldsProps {
  readonly name: string;
  readonly joint: CaseJoint;
  /** Between two sections, where a support bearing may hang: the lengths of both, null where they are not known. */
  readonly between: SectionLengths | null;
  readonly onChange: (changes: Changes<CaseJoint>) => void;
}

export interface SectionLengths {
  readonly before: number | null;
  readonly after: number | null;
}

export function JointFields({ name, joint, between, onChange }: JointFieldsProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  const { labels } = catalogueOf(useLanguage());
  return (
    <DraftScope part={`joint ${joint.id}`}>
      <section className={styles.part}>
        <h3>{name}</h3>
        <Choice
          label={names.kind}
          options={KINDS.map((kind) => ({ value: kind, label: labels.jointKinds[kind] }))}
          value={joint.kind}
          // Only a double cross joint has a centring device.
          onChange={(kind) => onChange(kind === "double-cross" ? { kind } : { kind, centring: null })}
        />
        {joint.kind === "cross" ? null : (
          <NumberFields
            fields={[{ key: "statedAngleDeg", measure: "angle", bounds: BOUNDS.statedAngle }]}
            values={joint}
            onChange={onChange}
          />
        )}
        {joint.kind === "double-cross" ? (
          <CentringFields centring={joint.centring} onChange={(centring) => onChange({ centring })} />
        ) : null}
        {between ? (
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
        {joint.support ? <SupportFields support={joint.support} lengths={between} onChange={(support) => onChange({ support })} /> : null}
      </section>
    </DraftScope>
  );
}

interface SupportFieldsProps {
  readonly support: Support;
  readonly lengths: SectionLengths | null;
  readonly onChange: (support: Support) => void;
}

function SupportFields({ support, lengths, onChange }: SupportFieldsProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  // The bearing sits on the section before its joint or on the one after it, so within that section's length.
  const along = support.bearingIs === "driven-side" ? lengths?.after : lengths?.before;
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
      <NumberFields
        fields={[{ key: "bearingToJointMm", measure: "length", bounds: below(BOUNDS.length, along) }]}
        values={support}
        onChange={(changes) => onChange(changed<Support>(support, changes))}
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
