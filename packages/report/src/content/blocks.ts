import type { Language } from "@halfturn/words";

/** How a result stands, for a mark beside the words; never the only carrier of the meaning. */
export type Tone = "good" | "over" | "under" | "unsure" | "none";

export interface Cell {
  readonly text: string;
  readonly tone?: Tone;
  /** Shown struck through: a reading that was set aside. */
  readonly struck?: boolean;
  /** A smaller line below: the interval of the number above it. */
  readonly detail?: string;
}

export interface Column {
  readonly label: string;
  readonly align: "start" | "end";
  /** Share of the width against the other columns. */
  readonly weight: number;
}

export interface Paragraph {
  readonly kind: "paragraph";
  readonly text: string;
}

export interface Notice {
  readonly kind: "notice";
  readonly tone: Tone | "stop";
  readonly title: string;
  readonly lines: readonly string[];
}

export interface Facts {
  readonly kind: "facts";
  readonly items: readonly { readonly label: string; readonly value: string }[];
}

/** The first column names the row. */
export interface Table {
  readonly kind: "table";
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  readonly notes: readonly string[];
}

export interface Figure {
  readonly kind: "figure";
  /** A whole `<svg>` element. */
  readonly svg: string;
  readonly caption: string;
  /** What the figure shows, for somebody who does not see it. */
  readonly alt: string;
}

export interface List {
  readonly kind: "list";
  readonly title: string;
  readonly ordered: boolean;
  readonly items: readonly string[];
}

export interface Step {
  readonly text: string;
  /** Stand beside the step that needs them. */
  readonly cautions: readonly string[];
}

/** Work to be done in order. */
export interface Steps {
  readonly kind: "steps";
  readonly title: string;
  readonly cautionLabel: string;
  readonly items: readonly Step[];
}

export interface FindingEntry {
  readonly number: number;
  readonly severity: "stop" | "warn" | "note";
  readonly severityLabel: string;
  readonly title: string;
  readonly says: string;
  readonly doNext: string;
  readonly place: string;
}

export interface FindingList {
  readonly kind: "findings";
  readonly doNextLabel: string;
  readonly items: readonly FindingEntry[];
}

/** Empty ruled lines to write on. */
export interface WritingSpace {
  readonly kind: "writing";
  readonly label: string;
  readonly lines: number;
}

export interface SignatureFields {
  readonly kind: "signature";
  readonly labels: readonly string[];
}

export type Block = Paragraph | Notice | Facts | Table | Figure | List | Steps | FindingList | WritingSpace | SignatureFields;

export interface Section {
  readonly title: string;
  readonly level: 1 | 2;
  readonly blocks: readonly Block[];
}

/** The whole report as plain data (it survives JSON), in words of one language, ready for any renderer. All text is literal: nothing in it is markup. */
export interface ReportContent {
  readonly language: Language;
  /** What kind of document this is. */
  readonly kind: string;
  readonly title: string;
  /** The day it is dated, ISO 8601, as handed in. */
  readonly date: string;
  readonly dateText: string;
  readonly head: Facts;
  readonly sections: readonly Section[];
  readonly pageOf: { readonly page: string; readonly of: string };
  /** Printed by a renderer that has to show characters as their codes. */
  readonly codesShown: string;
  readonly tool: string;
}
