import type { CaseDriveline } from "@halfturn/casefile";
import { catalogueOf, drivelineName, namesOf } from "@halfturn/words";
import { memo } from "react";
import { Card } from "../../controls/card.js";
import { Fields } from "../../controls/fields.js";
import { Fold } from "../../controls/fold.js";
import { TextEntry } from "../../controls/text-entry.js";
import { fieldNames } from "../../words/field-names.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { AxleFields } from "./axle-fields.js";
import { describeWords } from "./describe-words.js";
import { changed, editAxle, editDriveline, editJoint, editSection } from "./edit-case.js";
import { JointFields } from "./joint-fields.js";
import { SectionFields } from "./section-fields.js";

export interface DrivelineCardProps extends Pick<CasePageProps, "document" | "edit"> {
  readonly index: number;
  readonly driveline: CaseDriveline;
}

/** How one driveline is built: what a tape, a look along the shaft and the vehicle's papers say. */
export const DrivelineCard = memo(DrivelineFields, isSame);

/** Of the document only the names of this driveline's parts are read. */
function isSame(before: DrivelineCardProps, after: DrivelineCardProps): boolean {
  return before.driveline === after.driveline && before.index === after.index && before.edit === after.edit;
}

function DrivelineFields({ document, edit, index, driveline }: DrivelineCardProps) {
  const words = useWords(describeWords);
  const names = useWords(fieldNames);
  const catalogue = catalogueOf(useLanguage());
  const nameOf = namesOf(document, index, catalogue);
  return (
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
            isBetween={k > 0 && k < driveline.joints.length - 1}
            onChange={(changes) => edit(editJoint(index, k, changes))}
          />
        ))}
      </Fold>
      <Fold title={words.ends}>
        <Fields>
          {(["source", "driven"] as const).map((end) => (
            <TextEntry
              key={end}
              label={names[end]}
              value={driveline[end]?.label ?? ""}
              onChange={(label) => edit(editDriveline(index, (before) => ({ ...before, [end]: changed(before[end], { label }) })))}
            />
          ))}
        </Fields>
      </Fold>
      <Fold title={words.axle}>
        <AxleFields axle={driveline.axle ?? {}} onChange={(changes) => edit(editAxle(index, changes))} />
      </Fold>
    </Card>
  );
}
