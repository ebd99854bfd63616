import { arePartsNamed, type Case, isNamed } from "@halfturn/casefile";
import type { CasePageProps } from "../case-page.js";
import { MoreDrivelines } from "./build-fold.js";
import { ComplaintCard } from "./complaint-card.js";
import { DrivelineCard } from "./driveline-card.js";
import { MoreCard } from "./more-card.js";
import { NumbersCard } from "./numbers-card.js";

/** Who complains of what, on which vehicle, and how its drivelines are built. */
export const DescribePage = ({ document, edit }: CasePageProps) => (
  <>
    <ComplaintCard document={document} edit={edit} />
    {document.drivelines.map((driveline, index) => (
      <DrivelineCard
        key={driveline.id}
        document={document}
        edit={edit}
        index={index}
        driveline={driveline}
        named={whatIsNamed(document, driveline.id)}
      />
    ))}
    <MoreDrivelines drivelines={document.drivelines} edit={edit} />
    <NumbersCard vehicle={document.vehicle} edit={edit} />
    <MoreCard document={document} edit={edit} />
  </>
);

const whatIsNamed = (document: Case, id: string) => {
  if (arePartsNamed(document, id)) return "parts";
  return isNamed(document, id) ? "driveline" : null;
};
