import type { CaseDriveline, CaseJoint, CaseSection } from "@halfturn/casefile";
import { memo } from "react";
import { Fields } from "../../controls/fields.js";
import { Fold } from "../../controls/fold.js";
import { TextEntry } from "../../controls/text-entry.js";
import { fieldNames } from "../../words/field-names.js";
import { useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { changed, editAxle, editDriveline, editJoint, editSection } from "./edit-case.js";
import { JointFields } from "./joint-fields.js";
import { SectionFields } from "./section-fields.js";
import { axleWords } from "./words/axle-words.js";
import { describeWords } from "./words/describe-words.js";

// Each part is drawn again only when it was changed itself: the others keep their objects through an edit.

interface PartProps extends Pick<CasePageProps, "edit"> {
  /** The place of the driveline, and of the part in it. */
  readonly index: number;
  readonly place: number;
  readonly name: string;
}

export const SectionPart = memo(({ edit, index, place, name, section }: PartProps & { readonly section: CaseSection }) => (
  <SectionFields name={name} section={section} onChange={(changes) => edit(editSection(index, place, changes))} />
));

interface JointPartProps extends PartProps {
  readonly joint: CaseJoint;
  /** Whether it lies between two sections, and their lengths; null where they are not known. */
  readonly isBetween: boolean;
  readonly lengthBefore: number | null;
  readonly lengthAfter: number | null;
}

export const JointPart = memo(({ edit, index, place, name, joint, isBetween, lengthBefore, lengthAfter }: JointPartProps) => (
  <JointFields
    name={name}
    joint={joint}
    between={isBetween ? { before: lengthBefore, after: lengthAfter } : null}
    onChange={(changes) => edit(editJoint(index, place, changes))}
  />
));

interface NamesFoldProps extends Pick<CasePageProps, "edit"> {
  readonly index: number;
  readonly label: string;
  readonly source: string;
  readonly driven: string;
  readonly axle: string;
  readonly joints: CaseDriveline["joints"];
}

/** What the shop calls the driveline and its parts. */
export const NamesFold = memo(({ edit, index, label, source, driven, axle, joints }: NamesFoldProps) => {
  const words = useWords(describeWords);
  const more = useWords(axleWords);
  const names = useWords(fieldNames);
  const ends = [
    { end: "source", value: source },
    { end: "driven", value: driven },
  ] as const;
  return (
    <Fold title={more.names}>
      <Fields>
        <TextEntry
          label={more.drivelineLabel}
          value={label}
          onChange={(next) => edit(editDriveline(index, (before) => changed<CaseDriveline>(before, { label: next })))}
        />
        {ends.map(({ end, value }) => (
          <TextEntry
            key={end}
            label={names[end]}
            value={value}
            onChange={(next) => edit(editDriveline(index, (before) => ({ ...before, [end]: changed(before[end], { label: next }) })))}
          />
        ))}
        <TextEntry label={more.axleLabel} value={axle} onChange={(next) => edit(editAxle(index, { label: next }))} />
        {joints.map((joint, k) => (
          <TextEntry
            key={joint.id}
            label={words.jointLabel(joint.id)}
            value={joint.label ?? ""}
            onChange={(next) => edit(editJoint(index, k, { label: next }))}
          />
        ))}
      </Fields>
    </Fold>
  );
});
