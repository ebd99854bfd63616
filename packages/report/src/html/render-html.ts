import type { ReportContent, Section } from "../content/blocks.js";
import { escapeHtml as text } from "./escape-html.js";
import { renderBlock } from "./render-block.js";
import { STYLE } from "./style.js";

/** Says to the browser what the file is anyway: nothing is fetched and nothing runs. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'";

const heading = ({ title, level }: Section): string => `<h${level + 1}>${text(title)}</h${level + 1}>`;

/** The report as one HTML file: for a phone, a screen and a printer, with no script and no request to anywhere. */
export function renderHtml(content: ReportContent): string {
  const sections = content.sections.map(
    (section) => `<section>${heading(section)}\n${section.blocks.map(renderBlock).join("\n")}</section>`,
  );
  return `<!doctype html>
<html lang="${content.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<title>${text(content.title)}</title>
<style>${STYLE}</style>
</head>
<body>
<main>
<header>
<p class="kind">${text(content.kind)}</p>
<h1 dir="auto">${text(content.title)}</h1>
${renderBlock(content.head)}
</header>
${sections.join("\n")}
</main>
<footer>${text(content.tool)}, ${text(content.dateText)}</footer>
</body>
</html>
`;
}
