import { type Case, newCase, restore } from "@halfturn/casefile";
import { describe, expect, it } from "vitest";
import { namesOf } from "./case-names.js";
import { catalogueOf } from "./catalogues.js";

const READINGS = [
  { at: "source", deg: 1.8, lower: "driven-end", side: "left" },
  { at: "front:source-end", deg: 1, lower: "driven-end", side: "left" },
  { at: "front:driven-end", deg: 1, lower: "driven-end", side: "left" },
  { at: "front:driven-end", deg: 1, lower: "driven-end", side: "right" },
  { at: "back", deg: 2, lower: "driven-end", side: "left" },
  { at: "back", deg: 2, lower: "driven-end", side: "left" },
  { at: "driven", face: "square", deg: 2, topLeans: "driven-end", side: "left" },
  { between: ["source", "front"], deg: 1, lower: "driven-end", side: "left" },
];

function gauged(): Case {
  const made = newCase({ layout: "two-piece", title: "", id: "1", createdAt: "2026-05-18T09:30:00Z" });
  const restored = restore({
    ...made,
    drivelines: made.drivelines.map((driveline) => ({
      ...driveline,
      sections: driveline.sections.map((section) => (section.id === "front" ? { ...section, label: "Front tube" } : section)),
    })),
    gauging: [
      {
        driveline: "rear",
        stage: "as-found",
        state: { rideHeight: "normal", wheels: "on-ground" },
        gauge: { resolutionDeg: 0.1, accuracyDeg: 0.1 },
        readings: READINGS,
        headings: [{ of: "front", lateralMm: 12, toward: "left", overMm: 900 }],
      },
    ],
  });
  if (!restored.ok) throw new Error(JSON.stringify(restored.problems));
  return restored.case;
}

describe("names of places", () => {
  const en = namesOf(gauged(), 0, catalogueOf("en"));
  const es = namesOf(gauged(), 0, catalogueOf("es"));

  it("say which shaft was read and where on it", () => {
    expect(en("gauging[0].readings[0]")).toBe("the reading of Source");
    expect(en("gauging[0].readings[1]")).toBe("the reading of Front tube at its source end");
    expect(es("gauging[0].readings[1]")).toBe("la lectura de Front tube en su extremo de la salida");
    expect(en("gauging[0].readings[6]")).toBe("the reading of the face of Pinion");
    expect(en("gauging[0].readings[7].deg")).toBe("the reading of Front tube zeroed on Source");
  });

  it("add the side, or the number in the report's table, where the words alone fit two readings", () => {
    expect(en("gauging[0].readings[3]")).toBe("the reading of Front tube at its driven end, from the right");
    expect(en("gauging[0].readings[5]")).toBe("the reading of Section back (no. 6)");
    expect(es("gauging[0].readings[5]")).toBe("la lectura de Tramo trasero (n.º 6)");
  });

  it("know headings, the turn-round check, sections and drivelines", () => {
    expect(en("gauging[0].headings[0]")).toBe("the plan-view measurement of Front tube");
    expect(en("gauging[0].gauge.zeroCheck[1]")).toBe("reading 2 of the turn-round check");
    expect(en("drivelines[0].sections[1]")).toBe("Section back");
    expect(en("drivelines[0]")).toBe("Driveline rear");
    // What nobody typed is no English word in a Spanish name.
    expect([es("drivelines[0].sections[1]"), es("drivelines[0]")]).toEqual(["Tramo trasero", "Línea de transmisión trasera"]);
  });

  it("leave ids without a label and places without a name as they are", () => {
    for (const key of ["J1", "vehicle", "gauging[0]", "gauging[0].state.wheels", "gauging[0].readings[99]", "gauging[9].readings[0]", ""])
      expect(en(key)).toBe(key);
  });
});
