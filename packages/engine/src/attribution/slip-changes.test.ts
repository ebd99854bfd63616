import { expect, test } from "vitest";
import { must } from "../signal/shaft-angle.test-support.js";
import { partsOf, recorded, shake } from "./attribution-cases.test-support.js";
import { type Attribution, attribute } from "./index.js";
import { sharesAhead } from "./slip-course.js";

/** The case allows up to 6 %; the converter slips by 5 % at first and by 1 % in the end. */
const SLIP = 0.06;
const asGiven = partsOf({ gearRatio: 1, slip: SLIP });
const asDriven = partsOf({ gearRatio: 1 });
const slipping = (shares: readonly number[]) => ({ times: [0, 40, 60], shares });
const CLOSING = slipping([0.05, 0.01, 0.01]);
const STEADY = slipping([0.03, 0.03, 0.03]);

const listen = async (order: number, ahead: typeof CLOSING, seed = 1): Promise<Attribution> => {
  const sources = [shake("wheel", 1, 0.2), { ...shake("engine", order), ahead }];
  return must(await attribute({ ...recorded({ seed, parts: asDriven, sources, roadNoise: 0.5 }), parts: asGiven }));
};
const said = ({ findings }: Attribution) => findings.find(({ code }) => code === "attribution.slip-changes")?.params;

/** A line of the map is 1/16 of a wheel order, of which the engine's third has some eleven; the ends of its way are cut off. */
const NEAR = 0.01;

test("a converter that closes during the drive is said, with what it slipped by", async () => {
  const params = said(await listen(3, CLOSING));
  expect(Math.abs(Number(params?.leastShare) - 0.01)).toBeLessThan(NEAR);
  expect(Math.abs(Number(params?.mostShare) - 0.05)).toBeLessThan(NEAR);
});

test("one that closes wholly is not said to have run behind, though the map's steps reach beyond that", () => {
  // A step of 0.5 % beyond 6 %, as a map may have.
  const { least, most } = sharesAhead({ low: 0.935, high: 1.04 }, SLIP);
  expect(least).toBe(0);
  expect(most).toBe(1.04 * 1.06 - 1);
  expect(sharesAhead({ low: 0.96, high: 1.04 }, SLIP).least).toBe(0.96 * 1.06 - 1);
});

test("one that slips by the same throughout is not, nor one that nobody hears", async () => {
  for (const order of [1, 3]) expect(said(await listen(order, STEADY))).toBeUndefined();
  const silent = must(
    await attribute({ ...recorded({ parts: asDriven, sources: [shake("propeller-shaft", 2)], roadNoise: 0.5 }), parts: asGiven }),
  );
  expect(said(silent)).toBeUndefined();
});

test("an engine that slides over the shaft's order does not pass for the shaft", async () => {
  const { verdict } = await listen(1, CLOSING);
  expect(verdict?.part).not.toBe("propeller-shaft");
});
