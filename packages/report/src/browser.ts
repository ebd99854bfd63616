/** Everything that runs in a browser too: the content and its HTML, without the compiler of the PDF. */
export type * from "./content/blocks.js";
export { type CorrectedDriveline, type CorrectionSubject, correctionSubjects } from "./content/correction-subject.js";
export { foretoldPicture, gaugedPicture } from "./content/predicted-picture.js";
export { isProved, proveSections } from "./content/prove.js";
export { reportContent } from "./content/report-content.js";
export type { ReportedCorrection, ReportedGauging, ReportInput } from "./content/report-input.js";
export { reportedCorrections } from "./content/reported-corrections.js";
export { reportedGaugings } from "./content/reported-gaugings.js";
export { renderHtml } from "./html/render-html.js";
