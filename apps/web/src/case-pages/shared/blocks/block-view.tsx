import type { Block, FindingList, Notice, Steps } from "@halfturn/report/browser";
import styles from "./block-view.module.css";
import { MARKS } from "./marks.js";
import { TableView } from "./table-view.js";

export interface BlockViewProps {
  readonly block: Block;
}

/** One block of the report's content on the screen and on paper; the same content as the PDF has. */
export const BlockView = ({ block }: BlockViewProps) => {
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
      return <NoticeView notice={block} />;
    case "list":
      return (
        <div className={styles.group}>
          <h4>{block.title}</h4>
          <Lines ordered={block.ordered} lines={block.items} />
        </div>
      );
    case "steps":
      return <StepsView steps={block} />;
    case "table":
      return <TableView table={block} />;
    case "figure":
      return (
        <figure className={styles.figure}>
          {/* biome-ignore lint/security/noDangerouslySetInnerHtml: made in the worker from numbers and escaped names */}
          <div dangerouslySetInnerHTML={{ __html: block.svg }} />
          <figcaption>{block.caption}</figcaption>
        </figure>
      );
    case "findings":
      return <FindingsView findings={block} />;
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

export const NoticeView = ({ notice: { tone, title, lines } }: { readonly notice: Notice }) => (
  <div className={`${styles.notice} ${styles[tone]}`}>
    <h4>
      <span aria-hidden="true">{MARKS[tone]}</span> {title}
    </h4>
    {lines.length > 0 ? <Lines ordered={false} lines={lines} /> : null}
  </div>
);

const StepsView = ({ steps: { title, cautionLabel, items } }: { readonly steps: Steps }) => (
  <div className={styles.group}>
    <h4>{title}</h4>
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

const FindingsView = ({ findings: { doNextLabel, items } }: { readonly findings: FindingList }) => (
  <ol className={styles.findings}>
    {items.map(({ number, severity, severityLabel, title, says, doNext, place }) => (
      <li key={number} value={number}>
        <h4>
          <span className={styles[severity]}>
            <span aria-hidden="true">{MARKS[severity]}</span> {severityLabel}:
          </span>{" "}
          {title}
        </h4>
        <p>{says}</p>
        <p>
          <strong>{doNextLabel}:</strong> {doNext}
        </p>
        {place === "" ? null : <p className={styles.small}>{place}</p>}
      </li>
    ))}
  </ol>
);
