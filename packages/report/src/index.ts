export * from "./browser.js";
export { type Paper, renderPdf } from "./pdf/render-pdf.js";
