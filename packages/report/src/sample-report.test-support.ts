import { readFileSync } from "node:fs";
import { type Case, examples, latestGaugings, restore, toAnalysisInput } from "@halfturn/casefile";
import { type AnalysisInput, analyseDriveline, type DrivelineAnalysis, type Estimate, type Verdict } from "@halfturn/engine/analysis";
import type { Finding } from "@halfturn/engine/findings";
import { shaftIds } from "@halfturn/engine/kinematics";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { degreesToRadians, rpm } from "@halfturn/engine/units";
import type { Language } from "@halfturn/words";
import type { ReportedGauging, ReportInput } from "./content/report-input.js";
import { reportedCorrections } from "./content/reported-corrections.js";

export const EXAMPLE_NAMES = examples.map(({ name }) => name);

/** An example case that ships with the product. */
export function exampleCase(name: string): Case {
  const example = examples.find((one) => one.name === name);
  if (!example) throw new Error(`No example is called ${name}.`);
  const restored = restore(readFileSync(new URL(example.url), "utf8"));
  if (!restored.ok) throw new Error(JSON.stringify(restored.problems));
  return restored.case;
}

const deg = (value: number, half: number): Estimate => ({
  value: degreesToRadians(value),
  u: degreesToRadians(half / 2),
  low: degreesToRadians(value - half),
  high: degreesToRadians(value + half),
});
const acceleration = (value: number, half: number): Estimate => ({ value, u: half / 2, low: value - half, high: value + half });

const VERDICTS: readonly Verdict[] = ["within", "uncertain", "over", "under", "not-gauged"];

/** Made-up results in the shape of an analysis: every verdict, every null and a set-aside reading turn up, so that the layout of each is seen. */
export function sampleAnalysis(
  input: AnalysisInput,
  findings: readonly Finding[] = sampleFindings(input),
  withheld = false,
): DrivelineAnalysis {
  const { driveline } = input;
  return {
    drivelineId: driveline.id,
    shafts: shaftIds(driveline).map((id, k) => ({
      id,
      inclination: deg(2.4 + k, 0.13),
      heading: k % 2 === 0 ? deg(0, 0.98) : deg(-0.29, 0.11),
    })),
    joints: driveline.joints.map(({ id }, k) => {
      const verdict = withheld ? "withheld" : (VERDICTS[k % VERDICTS.length] as Verdict);
      return {
        id,
        operatingAngle: verdict === "not-gauged" ? null : deg(3.21 + k, 0.19),
        maximum: degreesToRadians(4.8),
        minimum: degreesToRadians(0.5),
        verdict,
      };
    }),
    cancellation: {
      equivalentAngle: deg(2.87, 0.4),
      equivalentMaximum: degreesToRadians(3),
      verdict: withheld ? "withheld" : "uncertain",
      benchResidual: deg(0.2, 0.3),
      benchVerdict: "met",
      bestPhasing: driveline.sections[0] ? { [driveline.sections[0].id]: degreesToRadians(0) } : {},
    },
    motion: {
      transmissionErrorPeakToPeak: deg(0.072, 0.02),
      secondOrder: deg(0.036, 0.01),
      fourthOrder: deg(0, 0),
      coefficients: { driven: null, sourceCoast: null, drive: [], coast: [] },
      speeds: [
        {
          shaftSpeed: rpm(3600),
          drivenAcceleration: acceleration(357, 90),
          sourceAccelerationCoast: acceleration(352, 90),
          drive: driveline.sections.map(({ id: section }) => ({ section, acceleration: acceleration(612, 80) })),
          coast: driveline.sections.map(({ id: section }, k) => ({ section, acceleration: k === 0 ? acceleration(640, 60) : null })),
        },
      ],
      verdict: withheld ? "withheld" : "over",
    },
    sensitivity: [
      { path: `${input.gauging.path}.readings[0]`, of: "source", share: 0.41 },
      { path: input.path, of: "heading:driven", share: 0.22 },
      { path: `${input.gauging.path}.gauge`, of: "zero", share: 0.14 },
      ...input.gauging.readings.slice(1, 5).map(({ path }, k) => ({ path, of: "driven", share: 0.08 - 0.01 * k })),
    ],
    withheld,
    findings,
  };
}

function sampleFindings({ driveline, gauging }: AnalysisInput): readonly Finding[] {
  const section = driveline.sections[0]?.id ?? "source";
  return [
    { code: "gauging.heading-not-measured", severity: "note", path: gauging.path, params: { shafts: ["source", "driven"] } },
    {
      code: "gauging.reading-set-aside",
      severity: "warn",
      path: `${gauging.path}.readings[1]`,
      params: { shaft: section, deg: 5.6, valueDeg: 5.6, otherDeg: 5.1 },
    },
    {
      code: "joint.over",
      severity: "warn",
      path: "drivelines[0].joints[2]",
      params: { joint: driveline.joints[0]?.id ?? "J1", angleDeg: 5.21, maximumDeg: 4.8 },
    },
  ];
}

export function reportedGaugings(
  file: Case,
  change: (input: AnalysisInput) => DrivelineAnalysis = analyseDriveline,
): readonly ReportedGauging[] {
  return latestGaugings(file).map((chosen) => {
    const input = toAnalysisInput(file, chosen, { defaults: DEFAULT_LIMITS, draws: 20_000, seed: 1 });
    return { gauging: chosen.gauging, input, analysis: change(input) };
  });
}

export function sampleReport(file: Case, language: Language = "en", gaugings = reportedGaugings(file)): ReportInput {
  const corrections = reportedCorrections(file, { draws: 20_000, seed: 1, accepted: [] }, gaugings);
  return { case: file, gaugings, corrections, language, date: "2026-05-18", toolVersion: "0.1.0" };
}

/** Texts that a template or a browser might take for more than text. All of them have glyphs in the document's fonts. */
export const HOSTILE_TEXTS: readonly string[] = [
  '#panic("x")',
  "$ x^2 $ and @reference and <label>",
  "back\\slash \\u{41} *bold* _it_ `raw`",
  '<script>alert("x")</script>',
  "</title><b>&amp; 'quoted' \"twice\"",
  '<svg onload="x"/>',
  '#read("/etc/hosts") {{7*7}}',
  "= heading // comment /* and */ ~ -- ---",
];

/** A case that says one text wherever a person may write. */
export function hostileCase(text: string): Case {
  const file = exampleCase("two-piece");
  return {
    ...file,
    title: text,
    notes: text,
    vehicle: { ...file.vehicle, label: text },
    complaint: { ...file.complaint, notes: text, feel: [text] },
    drivelines: file.drivelines.map((driveline) => ({
      ...driveline,
      label: text,
      sections: driveline.sections.map((section) => ({ ...section, label: text })),
      joints: driveline.joints.map((joint) => ({ ...joint, label: text })),
    })),
    gauging: (file.gauging ?? []).map((gauging) => ({ ...gauging, notes: text, gauge: { ...gauging.gauge, label: text } })),
  };
}
