import type { CaseDriveline, CaseSection } from "@halfturn/casefile";
import { catalogueOf, drivelineName, namesOf } from "@halfturn/words";
import { memo } from "react";
import { Card } from "../../controls/card.js";
import { Fields } from "../../controls/fields.js";
import { Fold } from "../../controls/fold.js";
import { TextEntry } from "../../controls/text-entry.js";
import { DraftScope } from "../../device/draft-scope.js";
import { fieldNames } from "../../words/field-names.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { AxleFields } from "./axle-fields.js";
import { changed, editAxle, editDriveline, editJoint, editSection } from "./edit-case.js";
import { FirstJointFields } from "./first-joint-fields.js";
import { JointFields } from "./joint-fields.js";
import { SectionFields } from "./section-fields.js";
import { axleWords } from "./words/axle-words.js";
import { describeWords } from "./words/describe-words.js";

export interface DrivelineCardProps extends Pick<CasePageProps, "document" | "edit"> {
  readonly index: number;
  readonly driveline: CaseDriveline;
}

/** How one driveline is built: what a tape, a look along the shaft and the vehicle's papers say. */
export const DrivelineCard = memo(DrivelineFields, isSame);

/** Of the document only the names of this driveline's parts are read, and the name of the first. */
function isSame(before: DrivelineCardProps, after: DrivelineCardProps): boolean {
  return (
    before.driveline === after.driveline &&
    before.index === after.index &&
    before.edit === after.edit &&
    before.document.drivelines[0]?.label === after.document.drivelines[0]?.label
  );
}

const lengthOf = (section: CaseSection | undefined): number | null => section?.lengthMm ?? null;

function DrivelineFields({ document, edit, index, driveline }: DrivelineCardProps) {
  const words = useWords(describeWords);
  const more = useWords(axleWords);
  const names = useWords(fieldNames);
  const catalogue = catalogueOf(useLanguage());
  const nameOf = namesOf(document, index, catalogue);
  return (
    <DraftScope part={driveline.id}>
      <Card title={drivelineName(document, index, catalogue)} aside={<span>{words.runs[driveline.runs]}</span>}>
        {driveline.sections.map((section, k) => (
          <SectionFields
            key={section.id}
            name={nameOf(section.id)}
            section={section}
            onChange={(changes) => edit(editSection(index, k, changes))}
          />
        ))}
        <Fold title={words.parts}>
          {driveline.joints.map((joint, k) => (
            <JointFields
              key={joint.id}
              name={nameOf(joint.id)}
              joint={joint}
              between={
                k > 0 && k < driveline.joints.length - 1
                  ? { before: lengthOf(driveline.sections[k - 1]), after: lengthOf(driveline.sections[k]) }
                  : null
              }
              onChange={(changes) => edit(editJoint(index, k, changes))}
            />
          ))}
        </Fold>
        <Fold title={words.axle}>
          <AxleFields axle={driveline.axle ?? {}} runs={driveline.runs} onChange={(changes) => edit(editAxle(index, changes))} />
        </Fold>
        {index > 0 ? (
          <Fold title={more.firstJoint}>
            <FirstJointFields
              firstJoint={driveline.firstJoint}
              first={drivelineName(document, 0, catalogue)}
              onChange={(firstJoint) => edit(editDriveline(index, (before) => changed<CaseDriveline>(before, { firstJoint })))}
            />
          </Fold>
        ) : null}
        <Fold title={more.names}>
          <Fields>
            <TextEntry
              label={more.drivelineLabel}
              value={driveline.label ?? ""}
              onChange={(label) => edit(editDriveline(index, (before) => changed<CaseDriveline>(before, { label })))}
            />
            {(["source", "driven"] as const).map((end) => (
              <TextEntry
                key={end}
                label={names[end]}
                value={driveline[end]?.label ?? ""}
                onChange={(label) => edit(editDriveline(index, (before) => ({ ...before, [end]: changed(before[end], { label }) })))}
              />
            ))}
            <TextEntry label={more.axleLabel} value={driveline.axle?.label ?? ""} onChange={(label) => edit(editAxle(index, { label }))} />
            {driveline.joints.map(({ id, label }, k) => (
              <TextEntry
                key={id}
                label={words.jointLabel(id)}
                value={label ?? ""}
                onChange={(next) => edit(editJoint(index, k, { label: next }))}
              />
            ))}
          </Fields>
        </Fold>
      </Card>
    </DraftScope>
  );
}
