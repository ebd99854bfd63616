import type { CorrectionInput } from "@halfturn/engine/correction";
import { type ChosenGauging, latestGaugings } from "../convert/latest-gaugings.js";
import { type CorrectionSettings, toCorrectionInput } from "../convert/to-correction-input.js";
import type { Case } from "../schema/case.js";
import { type TaughtGeometry, taughtGeometry } from "./taught-geometry.js";

/** What a prediction or a plan is made from. */
export interface CorrectionBasis {
  readonly document: Case;
  readonly input: CorrectionInput;
  /** The gauging that speaks for each driveline, in file order. */
  readonly chosen: readonly ChosenGauging[];
  readonly taught: TaughtGeometry;
}

/** The latest gauging of every driveline; with `gauging` that one for its own driveline. */
export function basisGaugings(document: Case, gauging?: number): readonly ChosenGauging[] {
  const latest = latestGaugings(document);
  if (gauging === undefined) return latest;
  const named = latestGaugings(document, { gauging });
  return latest.map((one) => named.find(({ driveline }) => driveline === one.driveline) ?? one);
}

/** Everything that predicting and planning need of a case, with what its earlier corrections taught. */
export function correctionBasis(
  document: Case,
  settings: Omit<CorrectionSettings, "learned"> & { readonly gauging?: number | undefined },
): CorrectionBasis {
  const chosen = settings.chosen ?? basisGaugings(document, settings.gauging);
  const taught = taughtGeometry(document, settings);
  const input = toCorrectionInput(document, { ...settings, chosen, learned: taught.kind === "learned" ? taught.geometry : undefined });
  return { document, input, chosen, taught };
}
