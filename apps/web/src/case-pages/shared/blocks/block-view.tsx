import type { Block, FindingList, Notice, Steps } from "@halfturn/report/browser";
import type { ReactNode } from "react";
import { Drawing } from "../../../controls/drawing.js";
import styles from "./block-view.module.css";
import { MARKS } from "./marks.js";
import { TableView } from "./table-view.js";

/** Of the headings inside a block: one below the heading that the block stands under. */
export type Level = 3 | 4 | 5;

export interface BlockViewProps {
  readonly block: Block;
  readonly level: Level;
}

const Heading = ({ level, children }: { readonly level: Level; readonly children: ReactNode }) => {
  const Tag = `h${level}` as const;
  return <Tag className={styles.heading}>{children}</Tag>;
};

/** One block of the report's content on the screen and on paper; the same content as the PDF has. */
export const BlockView = ({ block, level }: BlockViewProps) => {
  switch (block.kind) {
    case "paragraph":
      return <p>{block.text}</p>;
    case "facts":
      return (
        <dl className={styles.facts}>
          {block.items.map(({ label, value }) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      );
    case "notice":
      return <NoticeView notice={block} level={level} />;
    case "list":
      return (
        <div className={styles.group}>
          <Heading level={level}>{block.title}</Heading>
          <Lines ordered={block.ordered} lines={block.items} />
        </div>
      );
    case "steps":
      return <StepsView steps={block} level={level} />;
    case "table":
      return <TableView table={block} />;
    case "figure":
      return (
        <figure className={styles.figure}>
          <div className={styles.sheet}>
            <Drawing svg={block.svg} />
          </div>
          <figcaption>{block.caption}</figcaption>
        </figure>
      );
    case "findings":
      return <FindingsView findings={block} level={level} />;
    case "writing":
      return <div className={styles.writing}>{block.label}</div>;
    case "signature":
      return (
        <div className={styles.signature}>
          {block.labels.map((label) => (
            <span key={label} className={styles.line}>
              {label}
            </span>
          ))}
        </div>
      );
  }
};

const Lines = ({ ordered, lines }: { readonly ordered: boolean; readonly lines: readonly string[] }) => {
  const items = lines.map((line) => <li key={line}>{line}</li>);
  return ordered ? <ol className={styles.lines}>{items}</ol> : <ul className={styles.lines}>{items}</ul>;
};

const NoticeView = ({ notice: { tone, title, lines }, level }: { readonly notice: Notice; readonly level: Level }) => (
  <div className={`${styles.notice} ${styles[tone]}`}>
    <Heading level={level}>
      <span aria-hidden="true">{MARKS[tone]}</span> {title}
    </Heading>
    {lines.length > 0 ? <Lines ordered={false} lines={lines} /> : null}
  </div>
);

const StepsView = ({ steps: { title, cautionLabel, items }, level }: { readonly steps: Steps; readonly level: Level }) => (
  <div className={styles.group}>
    <Heading level={level}>{title}</Heading>
    <ol className={styles.lines}>
      {items.map(({ text, cautions }) => (
        <li key={text}>
          <p>{text}</p>
          {cautions.map((caution) => (
            <p key={caution} className={styles.caution}>
              <strong>
                <span aria-hidden="true">⚠ </span>
                {cautionLabel}:
              </strong>{" "}
              {caution}
            </p>
          ))}
        </li>
      ))}
    </ol>
  </div>
);

const FindingsView = ({ findings: { doNextLabel, items }, level }: { readonly findings: FindingList; readonly level: Level }) => (
  <ol className={styles.findings}>
    {items.map(({ number, severity, severityLabel, title, says, doNext, place }) => (
      <li key={number} value={number}>
        <Heading level={level}>
          <span className={styles[severity]}>
            <span aria-hidden="true">{MARKS[severity]}</span> {severityLabel}:
          </span>{" "}
          {title}
        </Heading>
        <p>{says}</p>
        <p>
          <strong>{doNextLabel}:</strong> {doNext}
        </p>
        {place === "" ? null : <p className={styles.small}>{place}</p>}
      </li>
    ))}
  </ol>
);
