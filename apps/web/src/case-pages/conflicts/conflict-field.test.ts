import { newCase } from "@halfturn/casefile";
import { catalogueOf, namesOf } from "@halfturn/words";
import { expect, test } from "vitest";
import { fieldNames } from "../../words/field-names.js";
import { conflictField } from "./conflict-field.js";

const document = {
  ...newCase({ id: "c", title: "t", layout: "two-piece", createdAt: "2026-02-03T08:00:00Z" }),
  gauging: [
    {
      driveline: "rear",
      stage: "as-found",
      state: { rideHeight: "normal", wheels: "on-ground" },
      gauge: { resolutionDeg: 0.1, accuracyDeg: 0.1 },
      readings: [{ at: "driven", deg: 2, lower: "driven-end", side: "left" }],
    },
  ],
} as const;
const nameOf = namesOf(document, 0, catalogueOf("en"));
const said = (path: string) => conflictField(path, fieldNames.en, nameOf);

test("a field is called by its name and that of the part it belongs to", () => {
  expect(said("title")).toBe("Title");
  expect(said("vehicle.label")).toBe("Vehicle: Name");
  expect(said("drivelines[0].sections[1].lengthMm")).toBe("Section back: Length, joint centre to joint centre");
  expect(said("gauging[0].readings[0]")).toBe(nameOf("gauging[0].readings[0]"));
  expect(said("gauging[0].readings[0]")).not.toContain("[");
  expect(said("x-fleet.number")).toBe("number");
});
