export type * from "./content/blocks.js";
export { reportContent } from "./content/report-content.js";
export type { ReportedCorrection, ReportedGauging, ReportInput } from "./content/report-input.js";
export { reportedCorrections } from "./content/reported-corrections.js";
export { reportedGaugings } from "./content/reported-gaugings.js";
export { renderHtml } from "./html/render-html.js";
export { type Paper, renderPdf } from "./pdf/render-pdf.js";
