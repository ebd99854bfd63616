import type { Block, Cell, FindingList, Steps, Table, Tone } from "../content/blocks.js";
import { escapeHtml as text } from "./escape-html.js";

const MARKS: Readonly<Record<Tone | "stop" | "warn" | "note", string>> = {
  good: "●",
  over: "▲",
  under: "▼",
  unsure: "◇",
  none: "–",
  stop: "▲",
  warn: "◇",
  note: "○",
};

/** The mark is for the eye alone: the words beside it say the same. */
const mark = (tone: keyof typeof MARKS): string => `<span class="mark" aria-hidden="true">${MARKS[tone]}</span>`;

const items = (lines: readonly string[]): string => lines.map((line) => `<li>${text(line)}</li>`).join("");

function cellText(cell: Cell): string {
  const body = cell.struck ? `<s>${text(cell.text)}</s>` : text(cell.text);
  const value = cell.tone ? `<span class="verdict ${cell.tone}">${mark(cell.tone)}<span>${body}</span></span>` : body;
  return cell.detail === undefined ? value : `<span>${value}<small>${text(cell.detail)}</small></span>`;
}

function renderTable({ caption, columns, rows, notes }: Table): string {
  const classOf = (k: number, extra = ""): string => {
    const names = [columns[k]?.align === "end" ? "end" : "", extra].filter(Boolean).join(" ");
    return names ? ` class="${names}"` : "";
  };
  const head = columns.map(({ label }, k) => `<th scope="col"${classOf(k)}>${text(label)}</th>`).join("");
  const body = rows.map((row) => {
    const cells = row.map((cell, k) =>
      k === 0
        ? `<th scope="row"${classOf(k)}>${cellText(cell)}</th>`
        : `<td data-label="${text(columns[k]?.label ?? "")}"${classOf(k, cell.text === "" ? "empty" : "")}>${cellText(cell)}</td>`,
    );
    return `<tr>${cells.join("")}</tr>`;
  });
  const below = notes.map((note) => `<p class="small">${text(note)}</p>`).join("");
  return `<div class="scroll"><table><caption>${text(caption)}</caption><thead><tr>${head}</tr></thead><tbody>${body.join("")}</tbody></table></div>${below}`;
}

const renderFindings = ({ doNextLabel, items: entries }: FindingList): string =>
  `<ol class="findings">${entries
    .map(
      (entry) =>
        `<li class="${entry.severity}"><span class="number">${entry.number}</span><div><h4>${mark(entry.severity)}<span class="severity">${text(entry.severityLabel)}:</span> ${text(entry.title)}</h4>` +
        `<p>${text(entry.says)}</p><p><strong>${text(doNextLabel)}:</strong> ${text(entry.doNext)}</p>${entry.place ? `<p class="small">${text(entry.place)}</p>` : ""}</div></li>`,
    )
    .join("")}</ol>`;

const renderSteps = ({ title, cautionLabel, items: steps }: Steps): string =>
  `<h3>${text(title)}</h3><ol class="steps">${steps
    .map(({ text: step, cautions }) => {
      const beside = cautions.map(
        (caution) => `<p class="caution">${mark("stop")}<strong>${text(cautionLabel)}:</strong> ${text(caution)}</p>`,
      );
      return `<li><p>${text(step)}</p>${beside.join("")}</li>`;
    })
    .join("")}</ol>`;

/** One block of the report as HTML. Every text in it is escaped; figures come as finished `<svg>` elements. */
export function renderBlock(block: Block): string {
  switch (block.kind) {
    case "paragraph":
      return `<p>${text(block.text)}</p>`;
    case "facts":
      return `<dl>${block.items.map(({ label, value }) => `<dt>${text(label)}</dt><dd>${text(value)}</dd>`).join("")}</dl>`;
    case "notice":
      return `<div class="notice ${block.tone}"><h3>${mark(block.tone)}${text(block.title)}</h3>${block.lines.length > 0 ? `<ul>${items(block.lines)}</ul>` : ""}</div>`;
    case "list": {
      const tag = block.ordered ? "ol" : "ul";
      return `<h3>${text(block.title)}</h3><${tag}>${items(block.items)}</${tag}>`;
    }
    case "steps":
      return renderSteps(block);
    case "table":
      return renderTable(block);
    case "figure":
      return `<figure><div>${block.svg}</div><figcaption>${text(block.caption)}</figcaption></figure>`;
    case "findings":
      return renderFindings(block);
    case "writing":
      return `<div class="writing">${text(block.label)}</div>`;
    case "signature":
      return `<div class="signature">${block.labels.map((label) => `<span>${text(label)}</span>`).join("")}</div>`;
  }
}
