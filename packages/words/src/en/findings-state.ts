import type { FindingCatalogue } from "../catalogue.js";

/** How the vehicle stood, and what a person decided about it. */
export const stateFindings = {
  "gauging.not-at-ride-height": {
    title: "Not at ride height",
    says: () =>
      "The vehicle was not standing at ride height while it was gauged, so the axle, and every angle with it, was somewhere it is not on the road. These are not road angles.",
    doNext: () =>
      "Bring it to ride height: wheels on the ground or on a drive-on lift, settled by rolling a little to and fro, normal load and tyre pressures. Then gauge everything again.",
  },
  "gauging.wheels-hanging": {
    title: "Wheels hanging",
    says: () => "The wheels were hanging while it was gauged: the axle had dropped and turned its pinion. These are not road angles.",
    doNext: () => "Put the vehicle on its wheels, on a drive-on lift, or its axle on stands at ride height. Then gauge everything again.",
  },
  "gauging.laden": {
    title: "Gauged laden",
    says: () => "The vehicle was gauged laden; the angles hold for that load only.",
    doNext: () => "Gauge once more without the load, or note in the report which load the complaint belongs to.",
  },
  "decision.stop-accepted": {
    title: "Stop finding accepted",
    says: (of) => `A person accepted the stop finding ${of.text("code")}; the numbers are shown as if it were not there.`,
    doNext: () => "Treat every number with that in mind, and gauge again when the cause can be put right.",
  },
} satisfies Partial<FindingCatalogue>;
