import type { Step } from "@halfturn/words";
import { type ComponentType, lazy } from "react";
import type { CasePageProps } from "./case-page.js";

const page = (load: () => Promise<ComponentType<CasePageProps>>) => lazy(async () => ({ default: await load() }));

/** Every step of the main flow that has a page, in its order. One line each; a page is fetched when it is first opened. */
export const PAGES: readonly (readonly [step: Step, page: ComponentType<CasePageProps>])[] = [
  ["describe", page(() => import("./describe/describe-page.js").then(({ DescribePage }) => DescribePage))],
  ["record", page(() => import("./record/record-page.js").then(({ RecordPage }) => RecordPage))],
  ["gauge", page(() => import("./gauge/gauge-page.js").then(({ GaugePage }) => GaugePage))],
  ["explain", page(() => import("./explain/explain-page.js").then(({ ExplainPage }) => ExplainPage))],
  ["correct", page(() => import("./correct/correct-page.js").then(({ CorrectPage }) => CorrectPage))],
  ["prove", page(() => import("./prove/prove-page.js").then(({ ProvePage }) => ProvePage))],
  ["report", page(() => import("./report/report-page.js").then(({ ReportPage }) => ReportPage))],
];
