import type { FindingCode } from "@halfturn/engine/findings";
import type { Subject } from "./subject.js";

const ABOUT_SHAFTS: readonly FindingCode[] = ["gauging.nothing-read", "gauging.shaft-not-read"];
const ABOUT_MOTION: readonly FindingCode[] = [...ABOUT_SHAFTS, "driveline.phasing-unknown", "driveline.arm-reference-missing"];

function because(subject: Subject, codes: readonly FindingCode[], fits: (shaft: unknown) => boolean): string {
  for (const code of codes) {
    const found = subject.findings.find(({ finding }) => finding.code === code && fits(finding.params.shaft));
    if (found) return subject.words.whyNot.because(found.entry.title);
  }
  return subject.words.whyNot.generic;
}

/** Why a result that hangs on the shafts named is not known; a finding without a shaft concerns all of them. */
export const whyShaftsUnknown = (subject: Subject, shafts: readonly string[]): string =>
  because(subject, ABOUT_SHAFTS, (shaft) => typeof shaft !== "string" || shafts.includes(shaft));

/** Why cancellation or motion is not known. */
export const whyMotionUnknown = (subject: Subject): string => because(subject, ABOUT_MOTION, () => true);
