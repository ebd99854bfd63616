// How long the app makes a slow device wait: from a press to the frame with its result. `npm run bench:web`; exits 1 where that takes too long.
import { DESK, launch, openDevice, PHONE } from "../../../apps/web/browser/support/device.js";
import { openShop, type Shop } from "../../../apps/web/browser/support/shop.js";
import { median } from "../measure.js";
import { type FirstLoad, firstLoad } from "./first-load.js";
import { gaugeScenarios } from "./gauge-scenarios.js";
import { pageScenarios } from "./page-scenarios.js";
import type { Scenario } from "./scenario.js";
import { searchScenario } from "./search-scenario.js";
import { yardstickOn } from "./yardstick.js";

const THROTTLE = 4;
/** From a press to what it changed, in 95 of 100. */
const PRESS_YARDSTICKS = 1;
/** From the start of a first visit to a list that answers. */
const VISIT_YARDSTICKS = 19;
const VISIT_BYTES = 220_000;
const FIRST_LOADS = 5;

const SCENARIOS = [...gaugeScenarios, ...pageScenarios, searchScenario];

const [, , wanted = ""] = process.argv;
const browser = await launch();
const shop = await openShop();
const { id: example } = await shop.add("two-piece");
try {
  console.log(`Main thread slowed ${THROTTLE} times; half and 95 of 100, in ms and in yardsticks\n`);
  const over: string[] = [];
  for (const scenario of SCENARIOS.filter(({ name }) => name.includes(wanted))) over.push(...(await pressed(scenario)));
  if ("First visit".includes(wanted)) over.push(...(await visited()));
  for (const name of over) console.error(`Over its budget: ${name}`);
  process.exitCode = over.length > 0 ? 1 : 0;
} finally {
  await browser.close();
  await shop.remove();
}

/** Prints a line for each thing that is watched, and gives those that came too late. */
async function pressed({ name, watched, times }: Scenario): Promise<readonly string[]> {
  const { page, context, yardstick } = await slowDevice(shop, DESK);
  page.setDefaultTimeout(20_000);
  const rounds = await times({ page, example, put, measure: yardstick.measure });
  await context.close();
  return watched.flatMap((one, k) => {
    const sorted = rounds.map((round) => round[k] ?? Number.NaN).sort((a, b) => a - b);
    const at = (share: number): number => sorted[Math.ceil(sorted.length * share) - 1] ?? Number.NaN;
    const allowed = median(yardstick.times);
    const ratio = at(0.95) / allowed;
    const what = `${name}, ${one.name}`;
    const figures = `${at(0.5).toFixed(0).padStart(4)} ${at(0.95).toFixed(0).padStart(4)} ms  ${ratio.toFixed(2)} of ${allowed.toFixed(0)} ms`;
    console.log(`${what.padEnd(56)} ${figures}  (${sorted.length} presses${one.follows ? ", no budget" : ""})`);
    return one.follows || ratio <= PRESS_YARDSTICKS ? [] : [what];
  });
}

async function visited(): Promise<readonly string[]> {
  const loads: FirstLoad[] = [];
  const yardsticks: number[] = [];
  for (let k = 0; k < FIRST_LOADS; k++) {
    const empty = await openShop();
    const { page, context, yardstick } = await slowDevice(empty, PHONE);
    await yardstick.measure();
    yardsticks.push(...yardstick.times);
    loads.push(await firstLoad(page));
    await context.close();
    await empty.remove();
  }
  const middle = (key: keyof FirstLoad) => median(loads.map((load) => load[key]));
  const ratio = middle("interactiveMs") / median(yardsticks);
  console.log(
    `\nFirst visit: ${middle("bytes")} bytes compressed, shown after ${middle("shownMs").toFixed(0)} ms, ` +
      `interactive after ${middle("interactiveMs").toFixed(0)} ms, ${ratio.toFixed(1)} yardsticks (median of ${FIRST_LOADS})`,
  );
  return [
    ...(ratio <= VISIT_YARDSTICKS ? [] : ["the first visit, until it answers"]),
    ...(middle("bytes") <= VISIT_BYTES ? [] : ["the first visit, in bytes"]),
  ];
}

/** A device of its own, slowed, and the yardstick on it. */
async function slowDevice({ address }: Shop, size: typeof DESK | typeof PHONE) {
  const device = await openDevice(browser, address, { size });
  const debug = await device.context.newCDPSession(device.page);
  await debug.send("Emulation.setCPUThrottlingRate", { rate: THROTTLE });
  return { ...device, yardstick: await yardstickOn(device.page) };
}

async function put(document: object): Promise<void> {
  const answer = await fetch(`${shop.address}/api/cases`, {
    method: "POST",
    body: JSON.stringify(document),
    headers: { "content-type": "application/json" },
  });
  if (!answer.ok) throw new Error(`the case was refused: ${answer.status} ${await answer.text()}`);
}
