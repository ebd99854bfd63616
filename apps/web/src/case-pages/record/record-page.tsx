import type { CasePageProps } from "../case-page.js";
import { TurningCard } from "./turning/turning-card.js";

/** Which rotating part a vibration follows: by the speed at which it is felt, and by a recording. */
export const RecordPage = ({ document, edit, settings }: CasePageProps) => (
  <TurningCard document={document} edit={edit} settings={settings} />
);
