import type { Step } from "@halfturn/words";
import { type ComponentType, lazy } from "react";
import { DraftScope } from "../device/draft-scope.js";
import type { CasePageProps } from "./case-page.js";

type Loaded = Promise<ComponentType<CasePageProps>>;

/** A step with its page. What is typed there and not kept yet belongs to this step of this case. */
const page = (step: Step, load: () => Loaded): readonly [step: Step, page: ComponentType<CasePageProps>] => [
  step,
  lazy(async () => {
    const Page = await load();
    return {
      default: (props: CasePageProps) => (
        <DraftScope part={`${props.document.id}/${step}`}>
          <Page {...props} />
        </DraftScope>
      ),
    };
  }),
];

/** Every step of the main flow that has a page, in its order. One line each; a page is fetched when it is first opened. */
export const PAGES: readonly (readonly [step: Step, page: ComponentType<CasePageProps>])[] = [
  page("describe", () => import("./describe/describe-page.js").then(({ DescribePage }) => DescribePage)),
  page("record", () => import("./record/record-page.js").then(({ RecordPage }) => RecordPage)),
  page("gauge", () => import("./gauge/gauge-page.js").then(({ GaugePage }) => GaugePage)),
  page("explain", () => import("./explain/explain-page.js").then(({ ExplainPage }) => ExplainPage)),
  page("correct", () => import("./correct/correct-page.js").then(({ CorrectPage }) => CorrectPage)),
  page("prove", () => import("./prove/prove-page.js").then(({ ProvePage }) => ProvePage)),
  page("report", () => import("./report/report-page.js").then(({ ReportPage }) => ReportPage)),
];
