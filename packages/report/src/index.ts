export type * from "./content/blocks.js";
export { reportContent } from "./content/report-content.js";
export type { ReportedGauging, ReportInput } from "./content/report-input.js";
export { reportedGaugings } from "./content/reported-gaugings.js";
export { renderHtml } from "./html/render-html.js";
export { type Paper, renderPdf } from "./pdf/render-pdf.js";
