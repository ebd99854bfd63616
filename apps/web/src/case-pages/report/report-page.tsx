import { useState } from "react";
import { caseFileName } from "../../cases/case-file-name.js";
import { Button } from "../../controls/button.js";
import { Card } from "../../controls/card.js";
import { Choice } from "../../controls/choice.js";
import { Column } from "../../controls/column.js";
import { Message } from "../../controls/message.js";
import { useWords } from "../../words/use-words.js";
import { caseText } from "../../worker/worker-client.js";
import type { CasePageProps } from "../case-page.js";
import { type Paper, pdfOf } from "./pdf-of.js";
import { ReportArticle } from "./report-article.js";
import styles from "./report-page.module.css";
import { reportWords } from "./report-words.js";
import { saveFile } from "./save-file.js";
import { usePrinting } from "./use-printing.js";
import { useReport } from "./use-report.js";

const PAPERS: readonly Paper[] = ["a4", "letter"];
const LANGUAGES = ["en", "es"] as const;

/** The record to hand over: as PDF from the shop's server, on paper or as a page from this device alone, and the case itself. */
export const ReportPage = ({ document, settings }: CasePageProps) => {
  const words = useWords(reportWords);
  const [language, setLanguage] = useState(settings.language);
  const [paper, setPaper] = useState<Paper>(settings.units === "us" ? "letter" : "a4");
  const [fetching, setFetching] = useState(false);
  const [said, setSaid] = useState("");
  const { report, failed } = useReport(document, language, settings.units);
  const isPrinting = usePrinting();
  const gauged = (document.gauging?.length ?? 0) > 0;
  const save = (name: string, content: Blob) => {
    saveFile(name, content);
    setSaid(words.saved(name));
  };
  const download = async () => {
    setFetching(true);
    setSaid(`${words.fetching} …`);
    const answer = await pdfOf(document, { language, units: settings.units, paper }, fetch);
    setFetching(false);
    if (answer.is !== "made") return setSaid(words[answer.is]);
    save(caseFileName(document, "pdf"), answer.pdf);
    if (answer.older) setSaid(words.older);
  };
  const saveCase = async () => {
    const text = await caseText(document);
    save(caseFileName(document, "halfturn.json"), new Blob([text], { type: "application/json" }));
  };
  return (
    <Column>
      <div className={styles.controls}>
        <Card title={words.title}>
          <div className={styles.choices}>
            <Choice
              label={words.language}
              value={language}
              onChange={setLanguage}
              options={LANGUAGES.map((value) => ({ value, label: words.languages[value] }))}
            />
            <Choice
              label={words.paper}
              value={paper}
              onChange={setPaper}
              options={PAPERS.map((value) => ({ value, label: words.papers[value] }))}
            />
          </div>
          <div className={styles.buttons}>
            <Button kind="main" onPress={() => void download()} isDisabled={!gauged || fetching}>
              {words.pdf}
            </Button>
            <Button onPress={() => window.print()} isDisabled={!report || !gauged}>
              {words.print}
            </Button>
            <Button
              onPress={() => {
                if (report) save(caseFileName(document, "html"), new Blob([report.html], { type: "text/html" }));
              }}
              isDisabled={!report || !gauged}
            >
              {words.page}
            </Button>
            <Button onPress={() => void saveCase()}>{words.file}</Button>
          </div>
          <p role="status" className={styles.said}>
            {said}
          </p>
        </Card>
      </div>
      {gauged ? null : <Message title={words.gaugeFirst}>{words.gaugeFirstHelp}</Message>}
      {gauged && !report ? <Message title={failed ? words.failed : `${words.working} …`} /> : null}
      {gauged && report ? (
        <section className={styles.preview} aria-label={words.preview}>
          <ReportArticle content={isPrinting ? report.onPaper : report.content} />
        </section>
      ) : null}
    </Column>
  );
};
