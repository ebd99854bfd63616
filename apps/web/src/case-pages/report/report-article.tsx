import type { ReportContent, Section } from "@halfturn/report/browser";
import { BlockView } from "../shared/blocks/block-view.js";
import styles from "./report-page.module.css";

/** The content of the report on the screen, and on paper when it is printed from here. */
export const ReportArticle = ({ content }: { readonly content: ReportContent }) => (
  <article className={styles.article} lang={content.language}>
    <header>
      <p className={styles.kind}>{content.kind}</p>
      <h2 className={styles.title} dir="auto">
        {content.title}
      </h2>
      <BlockView block={content.head} level={3} />
    </header>
    {content.sections.map((section, k) => (
      // Two drivelines may have a section of the same title; sections are never moved.
      // biome-ignore lint/suspicious/noArrayIndexKey: see above
      <SectionView key={k} section={section} />
    ))}
    <footer className={styles.foot}>
      {content.tool}, {content.dateText}
    </footer>
  </article>
);

const SectionView = ({ section: { title, level, blocks } }: { readonly section: Section }) => (
  <section className={styles.section}>
    {level === 1 ? <h3 className={styles.first}>{title}</h3> : <h4 className={styles.second}>{title}</h4>}
    {blocks.map((block, k) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: blocks have no names and are never moved
      <BlockView key={k} block={block} level={level === 1 ? 4 : 5} />
    ))}
  </section>
);
