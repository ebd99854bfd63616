import { newCase } from "@halfturn/casefile";
import type { CaseSummary } from "@halfturn/exchange";
import { expect, test } from "vitest";
import { type DeviceCase, firstRecord } from "../device/device-case.js";
import { caseRows, drawnRows } from "./case-rows.js";

const kept = (id: string, title: string, label?: string): DeviceCase => {
  const document = newCase({ id, title, layout: "one-piece", createdAt: "2026-02-03T08:00:00Z" });
  return firstRecord(label === undefined ? document : { ...document, vehicle: { label } }, "2026-02-03T08:00:00Z");
};
const held = (id: string, savedAt: string): CaseSummary => ({
  id,
  title: `Case ${id}`,
  vehicle: null,
  revision: 1,
  savedAt,
  savedBy: "-",
  progress: { gauged: true, corrected: false, proved: false },
});
const rows = (cases: readonly DeviceCase[], words: string, summaries: readonly CaseSummary[] = []) =>
  caseRows(cases, summaries, { words, putAway: false }).map(({ id }) => id);

test("each word sought begins a word of the case, capitals and accents aside", () => {
  const cases = [kept("a", "Vibración a 70", "Camión 3"), kept("b", "Rumble", "Van 4")];
  expect(rows(cases, "vibracion cam")).toEqual(["a"]);
  expect(rows(cases, "VAN")).toEqual(["b"]);
  expect(rows(cases, "umble")).toEqual([]);
  expect(rows(cases, "  ")).toHaveLength(2);
});

test("a case of this device stands once, before what the server says of it, newest first", () => {
  const cases = [kept("a", "Here")];
  const summaries = [held("a", "2026-02-05T08:00:00Z"), held("b", "2026-02-04T08:00:00Z"), held("c", "2026-02-01T08:00:00Z")];
  expect(caseRows(cases, summaries, { words: "", putAway: false }).map(({ id, here }) => [id, here])).toEqual([
    ["b", false],
    ["a", true],
    ["c", false],
  ]);
});

test("what is put away stands in its own list", () => {
  const away: DeviceCase = { ...kept("a", "Away"), putAway: 1 };
  expect(rows([away], "")).toEqual([]);
  expect(caseRows([away], [], { words: "", putAway: true })).toHaveLength(1);
  // The server may not know yet: it is not listed twice.
  expect(rows([away], "", [held("a", "2026-02-05T08:00:00Z")])).toEqual([]);
});

test("the first rows and those that stand already are drawn at once; what is no longer sought stays in its place, to be taken out later", () => {
  const cases = ["a", "b", "c", "d", "e", "f", "g", "h", "i"].map((id) => kept(id, id < "d" ? "Van" : "Lorry"));
  const all = caseRows(cases, [], { words: "", putAway: false });
  const vans = caseRows(cases, [], { words: "van", putAway: false });
  const drawn = (wanted: typeof all, standing: typeof all) =>
    drawnRows(wanted, standing)
      .map(({ row, isLeft }) => (isLeft ? `(${row.id})` : row.id))
      .join(" ");
  expect(drawn(all, [])).toBe("a b c d e f");
  expect(drawn(all, all)).toBe("a b c d e f g h i");
  expect(drawn(all, all.slice(6))).toBe("a b c d e f g h i");
  expect(drawn(vans, all)).toBe("a b c (d) (e) (f) (g) (h) (i)");
  expect(drawn(vans, vans)).toBe("a b c");
  expect(drawn([], vans)).toBe("(a) (b) (c)");
});
