import { type Case, newCase } from "@halfturn/casefile";

/** A two-piece driveline gauged without a slip: six places from the left, with the gauge turned round. */
export const gaugedTwoPiece = (): Case => ({
  ...newCase({ id: "gauged", title: "Gauged", layout: "two-piece", createdAt: "2026-01-19T07:30:00Z" }),
  gauging: [
    {
      driveline: "rear",
      stage: "as-found",
      state: { rideHeight: "normal", wheels: "on-drive-on-lift" },
      gauge: {
        resolutionDeg: 0.1,
        accuracyDeg: 0.1,
        zeroCheck: [
          { deg: 0.3, lower: "display-right" },
          { deg: 0.3, lower: "display-left" },
        ],
      },
      readings: [
        { at: "source", face: "square", deg: 2.4, topLeans: "driven-end", side: "left" },
        { at: "front:source-end", deg: 5.6, lower: "driven-end", side: "left" },
        { at: "front:driven-end", deg: 5.6, lower: "driven-end", side: "left" },
        { at: "back:source-end", deg: 5.1, lower: "driven-end", side: "left" },
        { at: "back:driven-end", deg: 5.1, lower: "driven-end", side: "left" },
        { at: "driven", face: "square", deg: 2.1, topLeans: "driven-end", side: "left" },
      ],
    },
  ],
});
