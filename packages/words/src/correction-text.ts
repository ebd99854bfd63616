import type { ChangeProblem, WrittenChange } from "@halfturn/casefile";
import type { AdjusterKind, InstructionCode, ReasonCode } from "@halfturn/engine/correction";
import type { FindingParams } from "@halfturn/engine/findings";
import type { QuantityFault } from "@halfturn/engine/units";
import type { Catalogue } from "./catalogue.js";
import { type CorrectionNames, correctionReader, shortAngle } from "./correction-reader.js";
import { type CorrectionWords, MISSING_KINDS } from "./correction-words.js";
import type { Numbers } from "./numbers/numbers.js";

/** Names, numbers and words together. */
export interface CorrectionText {
  readonly change: (change: WrittenChange, kind: AdjusterKind | undefined) => string;
  readonly instruction: (instruction: { readonly code: InstructionCode; readonly params: FindingParams }) => string;
  readonly reason: (reason: { readonly code: ReasonCode; readonly params: FindingParams }) => string;
  readonly missing: (of: string) => string;
}

/** What is fitted as spacers is bought; anything else is moved by so much. */
const lengthOf = (size: number, kind: AdjusterKind | undefined, numbers: Numbers): string =>
  kind === "support-drop" || kind === "mount-spacer" ? numbers.partSize(size) : numbers.length(size);

export function correctionText({ correction, numbers }: Catalogue, names: CorrectionNames): CorrectionText {
  return {
    change: ({ adjuster, amount, unit }, kind) => {
      const size = Math.abs(amount);
      const text =
        unit === "deg"
          ? shortAngle(size, numbers)
          : unit === "mm"
            ? lengthOf(size, kind, numbers)
            : correction.steps(String(size), size === 1);
      const way = kind ? correction.amounts[kind](text, amount > 0) : `${amount < 0 ? "-" : ""}${text}`;
      return `${names.adjuster(adjuster)}: ${way}`;
    },
    instruction: ({ code, params }) => correction.instructions[code](correctionReader(params, names, numbers)),
    reason: ({ code, params }) => correction.reasons[code](correctionReader(params, names, numbers)),
    missing: (of) => {
      const [kind = "", id = ""] = of.split(":");
      const known = MISSING_KINDS.find((candidate) => candidate === kind);
      if (!known) return of;
      return correction.missing[known](kind === "pad-length" ? names.adjuster(id) : id === "" ? "" : names.part(id));
    },
  };
}

/** Why a change as typed cannot be made, on one line. */
export function changeProblemText({ correction, numbers }: Catalogue, problem: ChangeProblem): string {
  const fault = problem.code === "amount-unreadable" ? quantityFaultText(correction, problem.params.fault) : "";
  // The union's code and params belong together; the compiler cannot follow that through an index.
  const words = correction.changeProblems[problem.code] as (params: ChangeProblem["params"], numbers: Numbers, fault: string) => string;
  return words(problem.params, numbers, fault);
}

/** What is wrong with a number as typed, without its place. */
export const quantityFaultText = ({ quantityFaults }: CorrectionWords, { code, params }: Pick<QuantityFault, "code" | "params">): string =>
  quantityFaults[code](params);
