import { type Case, newCase } from "@halfturn/casefile";
import { describe, expect, test } from "vitest";
import { drivelinePictureOf } from "./picture-of.js";

const fresh = newCase({ id: "c", title: "c", layout: "two-piece", createdAt: "2026-01-01T00:00:00Z" });
const request = { driveline: 0, gauging: null, analysis: null, language: "en" } as const;

describe("the picture of a case's driveline", () => {
  test("an empty case has generic names, a support bearing at an unknown distance and nothing measured", () => {
    const picture = drivelinePictureOf({ ...request, case: fresh });
    expect(picture.names).toEqual({ source: "Source", driven: "Pinion", sections: { front: "Section front", back: "Section back" } });
    expect(picture.supports).toEqual([{ joint: "J2", bearingIs: "source-side", bearingToJoint: null }]);
    expect(picture.measuredHeadings).toEqual([]);
    expect(picture.axle).toBeNull();
  });

  test("labels, lengths and measured headings are those of the case", () => {
    const [rear] = fresh.drivelines as [Case["drivelines"][number]];
    const gauging = {
      driveline: "rear",
      stage: "as-found",
      state: { rideHeight: "normal", wheels: "on-ground" },
      gauge: { resolutionDeg: 0.1, accuracyDeg: 0.1 },
      readings: [],
      headings: [{ of: "front", lateralMm: 12, toward: "left", overMm: 1180 }],
    } as const;
    const document: Case = {
      ...fresh,
      drivelines: [{ ...rear, source: { label: "Transmission output" }, axle: { centreToJointMm: 330 } }],
      gauging: [gauging],
    };
    const picture = drivelinePictureOf({ ...request, case: document, gauging: 0 });
    expect(picture.names.source).toBe("Transmission output");
    expect(picture.axle).toEqual({ centreToJoint: 0.33, jointAboveCentre: null });
    expect(picture.measuredHeadings).toEqual(["front"]);
  });
});
