import type { FindingCode, FindingParams } from "@halfturn/engine/findings";
import type { Subject } from "./subject.js";

const ABOUT_SHAFTS: readonly FindingCode[] = ["gauging.nothing-read", "gauging.shaft-not-read", "gauging.group-not-tied"];
const ABOUT_MOTION: readonly FindingCode[] = [...ABOUT_SHAFTS, "driveline.phasing-unknown", "driveline.arm-reference-missing"];

const namedIn = ({ shaft, shafts }: FindingParams): readonly unknown[] =>
  Array.isArray(shafts) ? shafts : shaft === undefined ? [] : [shaft];

function because(subject: Subject, codes: readonly FindingCode[], fits: (shafts: readonly unknown[]) => boolean): string {
  for (const code of codes) {
    const found = subject.findings.find(({ finding }) => finding.code === code && fits(namedIn(finding.params)));
    if (found) return subject.words.whyNot.because(found.entry.title);
  }
  return subject.words.whyNot.generic;
}

/** Why a result that hangs on the shafts named is not known; a finding without a shaft concerns all of them. */
export const whyShaftsUnknown = (subject: Subject, shafts: readonly string[]): string =>
  because(subject, ABOUT_SHAFTS, (named) => named.length === 0 || named.some((shaft) => shafts.includes(shaft as string)));

/** Why cancellation or motion is not known. */
export const whyMotionUnknown = (subject: Subject): string => because(subject, ABOUT_MOTION, () => true);
