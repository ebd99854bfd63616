import type { CaseLimits } from "@halfturn/casefile";
import { memo } from "react";
import { Fold } from "../../controls/fold.js";
import { TextEntry } from "../../controls/text-entry.js";
import { measureWords } from "../../measure/measure-words.js";
import { shownAs } from "../../measure/measures.js";
import { measureText } from "../../measure/read-measure.js";
import { useSettings } from "../../settings/settings-context.js";
import { useWords } from "../../words/use-words.js";
import type { CasePageProps } from "../case-page.js";
import { editLimits } from "./edit-case.js";
import {
  ACCELERATION_LIMITS,
  BENCH_LIMITS,
  builtInLimit,
  COMMON_LIMITS,
  type LimitKey,
  limitBounds,
  OTHER_JOINT_LIMITS,
} from "./limit-keys.js";
import { NumberFields } from "./number-fields.js";
import { moreWords } from "./words/more-words.js";

export interface LimitsFieldsProps extends Pick<CasePageProps, "edit"> {
  readonly limits: CaseLimits | undefined;
}

const NOTHING: CaseLimits = {};

/** Limits of one's own, in place of the built-in ones. */
export const LimitsFields = memo(function LimitsFields({ limits = NOTHING, edit }: LimitsFieldsProps) {
  const { settings } = useSettings();
  const words = useWords(moreWords);
  const { decimalSign } = useWords(measureWords);
  const measureOf = (key: LimitKey) => (key.endsWith("Deg") ? "angle" : "angular-acceleration");
  const builtIn = (key: LimitKey): string => {
    const measure = measureOf(key);
    const { chip } = shownAs(measure, settings.units);
    return words.builtIn(`${measureText(builtInLimit(key), measure, settings.units, decimalSign)}${chip === "°" ? "" : " "}${chip}`);
  };
  const fields = (keys: readonly LimitKey[]) => (
    <NumberFields
      fields={keys.map((key) => ({ key, measure: measureOf(key), bounds: limitBounds(key, limits), help: builtIn(key) }))}
      values={limits}
      onChange={(changes) => edit(editLimits(changes))}
    />
  );
  return (
    <>
      <p>{words.limitsHelp}</p>
      <TextEntry
        label={words.limitsSource}
        help={words.limitsSourceHelp}
        value={limits.source ?? ""}
        onChange={(source) => edit(editLimits({ source }))}
      />
      {fields(COMMON_LIMITS)}
      <Fold title={words.accelerations}>{fields(ACCELERATION_LIMITS)}</Fold>
      <Fold title={words.otherJoints}>{fields(OTHER_JOINT_LIMITS)}</Fold>
      <Fold title={words.benchRule}>{fields(BENCH_LIMITS)}</Fold>
    </>
  );
});
