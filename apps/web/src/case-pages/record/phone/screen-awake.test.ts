import { expect, test } from "vitest";
import { awakeUnlessLeft, screenAwake } from "./screen-awake.js";

/** A browser that takes its time to keep the screen on. */
function slowScreen() {
  let [answer, isOn] = [(): void => undefined, false];
  const asked = new Promise<void>((resolve) => {
    answer = resolve;
  });
  const awake = async () => {
    await asked;
    isOn = true;
    return () => {
      isOn = false;
    };
  };
  return { awake, answer: () => answer(), isOn: () => isOn };
}

test("a page that is left while the browser keeps the screen on leaves nothing on", async () => {
  const screen = slowScreen();
  let isLeft = false;
  const kept = awakeUnlessLeft(() => isLeft, screen.awake);
  isLeft = true;
  screen.answer();
  expect(await kept).toBe(null);
  expect(screen.isOn()).toBe(false);
});

test("a page that stays has it on until it lets it sleep", async () => {
  const screen = slowScreen();
  const kept = awakeUnlessLeft(() => false, screen.awake);
  screen.answer();
  const sleep = await kept;
  expect(screen.isOn()).toBe(true);
  sleep?.();
  expect(screen.isOn()).toBe(false);
});

/** A browser that lets the screen sleep as soon as the page is hidden. */
function strictBrowser() {
  const locks = new Set<object>();
  const page = Object.assign(new EventTarget(), { visibilityState: "visible" as DocumentVisibilityState });
  const wakeLock = {
    request: async () => {
      if (page.visibilityState !== "visible") throw new DOMException("hidden", "NotAllowedError");
      const lock = { release: async () => void locks.delete(lock) };
      locks.add(lock);
      return lock as unknown as WakeLockSentinel;
    },
  };
  const turn = async (to: DocumentVisibilityState): Promise<void> => {
    page.visibilityState = to;
    if (to === "hidden") locks.clear();
    page.dispatchEvent(new Event("visibilitychange"));
    await Promise.resolve();
  };
  return { wakeLock, page, turn, locks };
}

test("a page that was hidden keeps the screen on again once it is seen, and no longer than asked", async () => {
  const { wakeLock, page, turn, locks } = strictBrowser();
  const sleep = await screenAwake({ wakeLock }, page);
  expect(locks.size).toBe(1);
  await turn("hidden");
  expect(locks.size).toBe(0);
  await turn("visible");
  await expect.poll(() => locks.size).toBe(1);
  await turn("visible");
  await expect.poll(() => locks.size).toBe(1);
  sleep();
  expect(locks.size).toBe(0);
  await turn("visible");
  expect(locks.size).toBe(0);
});

test("a browser that cannot keep the screen on costs nothing", async () => {
  const { page } = strictBrowser();
  const sleep = await screenAwake({}, page);
  expect(sleep).not.toThrow();
});
