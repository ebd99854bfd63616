import { expect, test } from "vitest";
import { must } from "../signal/shaft-angle.test-support.js";
import { partsOf, recorded, shake } from "./attribution-cases.test-support.js";
import { type Attribution, attribute } from "./index.js";

const SOURCES = [shake("propeller-shaft", 1, 1), shake("wheel", 1, 0.4)];
/** Of attribution-cases: m/s at which amplitudes are meant, and metres per turn of the wheel. */
const [SPEED, CIRCUMFERENCE] = [25, 2.4];

/** The same drive as a velocity or a displacement: a cos x is the derivative of (a/w) cos(x - pi/2), and w goes with the speed. */
async function heardAs(times: 0 | 1 | 2): Promise<Attribution> {
  const sources = SOURCES.map((source) => {
    const perWheelTurn = partsOf().find(({ part }) => part === source.part)?.perWheelTurn ?? 1;
    const w = (2 * Math.PI * perWheelTurn * source.order * SPEED) / CIRCUMFERENCE;
    return { ...source, amplitude: source.amplitude / w ** times, speedPower: -times, phase: source.phase - (times * Math.PI) / 2 };
  });
  const input = recorded({ sources, sensor: { rate: 1024, filter: null, noise: 0, offset: 0, drift: 0, fullScale: null, resolution: 0 } });
  const quantity = (["acceleration", "velocity", "displacement"] as const)[times];
  return must(await attribute({ ...input, channels: input.channels.map((channel) => ({ ...channel, quantity })) }));
}
const ofOrder = ({ contributions }: Attribution, { part, order }: { readonly part: string; readonly order: number }) =>
  contributions.find((one) => one.part === part && one.order === order);

/** In a block of twelve turns the speed changes by 3 % at most, and with it w against its middle: half of that squared. */
const NEAR = 0.002;

test.each([1, 2] as const)("an acceleration integrated %i times is heard with the amplitudes of the acceleration", async (times) => {
  const found = await heardAs(times);
  for (const source of SOURCES) {
    const { value = Number.NaN } = ofOrder(found, source)?.amplitudes[0] ?? {};
    expect(Math.abs(value / source.amplitude - 1)).toBeLessThan(NEAR);
  }
  expect(found.findings.map(({ code }) => code)).toContain("attribution.differentiated");
});

test("an acceleration stays what it is", async () => {
  expect((await heardAs(0)).findings.map(({ code }) => code)).not.toContain("attribution.differentiated");
});

test("phases turn by a quarter with each derivative", async () => {
  const phases = await Promise.all(
    ([0, 1, 2] as const).map(async (times) => ofOrder(await heardAs(times), { part: "propeller-shaft", order: 1 })?.course?.phases[3]),
  );
  for (const phase of phases) expect(Math.abs((phase ?? Number.NaN) - (phases[0] ?? Number.NaN))).toBeLessThan(NEAR);
});
