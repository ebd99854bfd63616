import type { CaseDriveline } from "@halfturn/casefile";
import { TogetherFields } from "../../measure/together-fields.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import { BOUNDS } from "./bounds.js";
import { changed } from "./edit-case.js";
import { NumberFields } from "./number-fields.js";
import { axleWords } from "./words/axle-words.js";
import { fieldHelp } from "./words/field-help.js";

type FirstJoint = NonNullable<CaseDriveline["firstJoint"]>;

export interface FirstJointFieldsProps {
  readonly firstJoint: FirstJoint | undefined;
  /** What the first driveline is called. */
  readonly first: string;
  readonly onChange: (firstJoint: FirstJoint | null) => void;
}

/** Where a second driveline begins, as at a transfer case. */
export function FirstJointFields({ firstJoint, first, onChange }: FirstJointFieldsProps) {
  const words = useWords(axleWords);
  const names = useWords(fieldNames);
  const help = useWords(fieldHelp);
  return (
    <>
      <p>{words.firstJointHelp(first)}</p>
      <TogetherFields
        part="firstJoint"
        fields={(["forwardMm", "upMm"] as const).map((key) => ({
          key,
          label: names[key],
          help: help[key],
          measure: "length" as const,
          bounds: BOUNDS.offset,
        }))}
        value={firstJoint ?? null}
        onChange={(next) => onChange(next && { ...firstJoint, ...next })}
      />
      {firstJoint ? (
        <NumberFields
          fields={[{ key: "leftMm", measure: "length", bounds: BOUNDS.offset }]}
          values={firstJoint}
          onChange={(changes) => onChange(changed<FirstJoint>(firstJoint, changes))}
        />
      ) : null}
    </>
  );
}
