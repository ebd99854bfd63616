import { expect, test } from "vitest";
import { awakeUnlessLeft } from "./screen-awake.js";

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
