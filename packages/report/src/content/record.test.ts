import type { Case, CaseRecording } from "@halfturn/casefile";
import { LANGUAGES } from "@halfturn/words";
import { describe, expect, test } from "vitest";
import { exampleCase, sampleReport } from "../sample-report.test-support.js";
import type { Block, Section, Table } from "./blocks.js";
import { reportContent } from "./report-content.js";

const HEARD: NonNullable<CaseRecording["heard"]> = {
  at: "2026-05-17T09:30:00Z",
  durationS: 41.2,
  sampleRateHz: 500,
  bandHz: 250,
  channel: "accel_z_ms2",
  speedFrom: "tacho_propeller_shaft",
  gear: "5",
  verdict: { part: "propeller-shaft", order: 1, probability: 0.97 },
  abstained: null,
  contributions: [
    { part: "wheel", order: 1, frequencyHz: [8, 11], observable: true, amplitudeMS2: null, share: 0.02, probability: 0 },
    {
      part: "propeller-shaft",
      order: 1,
      frequencyHz: [30.5, 40.25],
      observable: true,
      amplitudeMS2: { value: 0.98, u: 0.02, interval95: [0.94, 1.02] },
      share: 0.57,
      probability: 0.97,
    },
    { part: "wheel", order: 2, frequencyHz: [16, 22], observable: true, amplitudeMS2: null, share: 0.001, probability: 0 },
    { part: "engine", order: 3, frequencyHz: [260, 320], observable: false, amplitudeMS2: null, share: null, probability: null },
  ],
  unexplainedShare: 0.4,
};
const withHeard = (heard: CaseRecording["heard"]): Case => ({
  ...exampleCase("two-piece"),
  recordings: [{ file: "drive.wav", ...(heard === undefined ? {} : { heard }) }],
});
const recordOf = (file: Case, language: "en" | "es" = "en"): Section | undefined =>
  reportContent(sampleReport(file, language)).sections.find(({ title }) => title === (language === "en" ? "Record" : "Grabar"));
const tables = (section: Section | undefined): readonly Table[] => section?.blocks.filter((block: Block) => block.kind === "table") ?? [];

describe("the section Record", () => {
  test("says what turns over the speeds of the complaint, with each order's frequencies", () => {
    const [turning, ...others] = tables(recordOf(exampleCase("two-piece")));
    expect(others).toEqual([]);
    expect(turning?.caption).toBe("What turns at 80 to 90\u00a0km/h in gear 4, and what it can shake at");
    // 80 km/h over 2.42 m is 9.18 turns a second, 90 km/h 10.33; the shaft turns 3.73 times as fast.
    const shaft = turning?.rows.find(([part]) => part?.text === "Propeller shaft");
    expect(shaft?.map(({ text }) => text)).toEqual(["Propeller shaft", "1", "34.3 to 38.5", "unbalance or runout"]);
  });

  test("says what a recording follows, how large and how sure, and what it cannot show", () => {
    const section = recordOf(withHeard(HEARD));
    const notice = section?.blocks.find((block) => block.kind === "notice");
    expect(notice).toMatchObject({
      lines: [
        "The recorded vibration follows the propeller shaft's first order: 97% probable among the orders that can be seen. It explains 57% of what was recorded.",
      ],
    });
    const heard = tables(section).at(-1);
    expect(heard?.rows.map((row) => row.map(({ text }) => text))).toEqual([
      ["Propeller shaft", "1", "30.5 to 40.3", "0.980", "57%", "97%"],
      ["Wheel", "1", "8.0 to 11.0", "not known", "2%", "<\u00a01%"],
    ]);
    expect(heard?.rows[0]?.[3]?.detail).toBe("0.940 to 1.020");
    expect(heard?.notes.join(" ")).toContain("nothing above 250\u00a0Hz, so it rules nothing out of: the engine's third order.");
  });

  test("says why no part is named, also for a reason of a later version", () => {
    const between = [
      { part: "propeller-shaft", order: 1 },
      { part: "engine", order: 1 },
    ];
    const noticeOf = (reason: string) =>
      recordOf(withHeard({ ...HEARD, verdict: null, abstained: { reason, between } }))?.blocks.find((block) => block.kind === "notice");
    expect(noticeOf("coincidence")).toMatchObject({
      title: "No part is named",
      lines: ["It is the propeller shaft's first order or the engine's first order: this recording cannot tell which."],
    });
    expect(noticeOf("moonlight")).toMatchObject({ lines: ["No order stands out of the noise, so no part is named."] });
  });

  test("says that a speed was followed in the vibration itself", () => {
    const facts = recordOf(withHeard({ ...HEARD, speedFrom: "vibration" }))?.blocks.find((block) => block.kind === "facts");
    expect(JSON.stringify(facts)).toContain("the vibration itself: which order it follows was assumed");
  });

  test("is left out where neither is known, and a recording that nobody listened to adds nothing", () => {
    const { complaint: _, ...quiet } = exampleCase("two-piece");
    expect(recordOf(quiet)).toBe(undefined);
    expect(tables(recordOf(withHeard(undefined)))).toHaveLength(1);
  });

  test.each(LANGUAGES)("%s: has every row as wide as its head", (language) => {
    const found = tables(recordOf(withHeard(HEARD), language));
    expect(found).toHaveLength(2);
    for (const { rows, columns } of found) for (const row of rows) expect(row).toHaveLength(columns.length);
  });

  test("brings the cautions of a road test", () => {
    const text = JSON.stringify(reportContent(sampleReport(withHeard(HEARD))));
    expect(text).toContain("On a road test the driver drives.");
  });
});
