import { Suspense } from "react";
import { Message } from "../../controls/message.js";
import type { OpenCase } from "../../device/open-case.js";
import { useSettings } from "../../settings/settings-context.js";
import { useWords } from "../../words/use-words.js";
import { useCalculation } from "../../worker/use-calculation.js";
import { PAGES } from "../pages.js";
import styles from "./case-frame.module.css";
import { CaseHead } from "./case-head.js";
import { frameWords } from "./frame-words.js";
import { StepBar } from "./step-bar.js";
import { StepCautions } from "./step-cautions.js";
import { stepProgress } from "./step-progress.js";
import { useDocument } from "./use-open-case.js";
import { useUndoKeys } from "./use-undo-keys.js";

/** What stands around every page of a case: its name, the way back, and the steps. */
export function CaseFrame({ open, step }: { readonly open: OpenCase; readonly step: string }) {
  const words = useWords(frameWords);
  const { settings } = useSettings();
  const document = useDocument(open);
  const calculation = useCalculation(open, document);
  useUndoKeys(open);
  const [current, Page] = PAGES.find(([name]) => name === step) ?? [];
  return (
    <div className={styles.frame}>
      <title>{`${document.title || words.untitled} – Halfturn`}</title>
      <CaseHead open={open} title={document.title || words.untitled} />
      {/* Each step begins at its top. */}
      <main key={step} className={styles.page}>
        <div className={styles.column}>
          {current ? <StepCautions step={current} /> : null}
          {Page ? (
            <Suspense fallback={<Message title="…" />}>
              <Page document={document} edit={open.edit} calculation={calculation} settings={settings} />
            </Suspense>
          ) : (
            <Message title={words.noSuchStep} />
          )}
        </div>
      </main>
      <div className={styles.steps}>
        <StepBar
          id={document.id}
          current={current ?? "describe"}
          steps={PAGES.map(([name]) => ({ step: name, progress: stepProgress(name, document, calculation.analysed) }))}
        />
      </div>
    </div>
  );
}
