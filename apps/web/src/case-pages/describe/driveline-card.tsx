import { type CaseDriveline, type CaseSection, withoutDriveline } from "@halfturn/casefile";
import { catalogueOf, drivelineName, namesOf } from "@halfturn/words";
import { memo } from "react";
import { Card } from "../../controls/card.js";
import { Fold } from "../../controls/fold.js";
import { DraftScope } from "../../device/draft-scope.js";
import { useMoveDrafts } from "../../device/kept-draft.js";
import { useLanguage, useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { AxleFields } from "./axle-fields.js";
import { BuildFold, type BuildFoldProps } from "./build-fold.js";
import { JointPart, NamesFold, SectionPart } from "./driveline-parts.js";
import { changed, editAxle, editDriveline } from "./edit-case.js";
import { FirstJointFields } from "./first-joint-fields.js";
import { axleWords } from "./words/axle-words.js";
import { describeWords } from "./words/describe-words.js";

export interface DrivelineCardProps extends Pick<CasePageProps, "document" | "edit"> {
  readonly index: number;
  readonly driveline: CaseDriveline;
  readonly named: BuildFoldProps["named"];
}

/** How one driveline is built: what a tape, a look along the shaft and the vehicle's papers say. */
export const DrivelineCard = memo(DrivelineFields, isSame);

/** Of the document only the names of this driveline's parts are read, and the name of the first. */
function isSame(before: DrivelineCardProps, after: DrivelineCardProps): boolean {
  return (
    before.driveline === after.driveline &&
    before.index === after.index &&
    before.named === after.named &&
    before.edit === after.edit &&
    before.document.drivelines[0]?.label === after.document.drivelines[0]?.label
  );
}

const lengthOf = (section: CaseSection | undefined): number | null => section?.lengthMm ?? null;

function DrivelineFields({ document, edit, index, driveline, named }: DrivelineCardProps) {
  const words = useWords(describeWords);
  const more = useWords(axleWords);
  const catalogue = catalogueOf(useLanguage());
  const nameOf = namesOf(document, index, catalogue);
  const moveDrafts = useMoveDrafts();
  const remove = (): void => {
    // The next one may get the same id.
    moveDrafts(driveline.id, null);
    edit((before) => withoutDriveline(before, driveline.id));
  };
  return (
    <DraftScope part={driveline.id}>
      <Card title={drivelineName(document, index, catalogue)} aside={<span>{words.runs[driveline.runs]}</span>}>
        {driveline.sections.map((section, k) => (
          <SectionPart key={section.id} edit={edit} index={index} place={k} name={nameOf(section.id)} section={section} />
        ))}
        <BuildFold
          edit={edit}
          index={index}
          name={drivelineName(document, index, catalogue)}
          sections={driveline.sections.length}
          named={named}
          onRemove={remove}
        />
        <Fold title={words.parts}>
          {driveline.joints.map((joint, k) => {
            const isBetween = k > 0 && k < driveline.joints.length - 1;
            return (
              <JointPart
                key={joint.id}
                edit={edit}
                index={index}
                place={k}
                name={nameOf(joint.id)}
                joint={joint}
                isBetween={isBetween}
                lengthBefore={isBetween ? lengthOf(driveline.sections[k - 1]) : null}
                lengthAfter={isBetween ? lengthOf(driveline.sections[k]) : null}
              />
            );
          })}
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
        <NamesFold
          edit={edit}
          index={index}
          label={driveline.label ?? ""}
          source={driveline.source?.label ?? ""}
          driven={driveline.driven?.label ?? ""}
          axle={driveline.axle?.label ?? ""}
          joints={driveline.joints}
        />
      </Card>
    </DraftScope>
  );
}
