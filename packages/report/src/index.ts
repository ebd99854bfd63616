export type * from "./content/blocks.js";
export { reportContent } from "./content/report-content.js";
export type { ReportedGauging, ReportFigure, ReportInput } from "./content/report-input.js";
export { type Paper, renderPdf } from "./pdf/render-pdf.js";
