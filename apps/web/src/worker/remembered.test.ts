import { expect, test } from "vitest";
import { remembering } from "./remembered.js";

function doubling() {
  const asked: number[] = [];
  const remembered = remembering(
    2,
    ({ value }: { readonly value: number }) => String(value),
    async ({ value }) => {
      asked.push(value);
      if (value < 0) throw new RangeError("below nought");
      return value * 2;
    },
  );
  return { asked, remembered };
}

test("an answer is worked out once for questions of one content, and known from the moment it is in", async () => {
  const { asked, remembered } = doubling();
  expect(remembered.known({ value: 3 })).toBeNull();
  const first = remembered.ask({ value: 3 });
  expect(remembered.known({ value: 3 })).toBeNull();
  expect(await remembered.ask({ value: 3 })).toBe(6);
  expect(await first).toBe(6);
  expect(remembered.known({ value: 3 })).toBe(6);
  expect(asked).toEqual([3]);
});

test("the answers that nobody asked for longest go first", async () => {
  const { asked, remembered } = doubling();
  for (const value of [1, 2, 1, 3]) await remembered.ask({ value });
  expect([1, 2, 3].map((value) => remembered.known({ value }))).toEqual([2, null, 6]);
  await remembered.ask({ value: 2 });
  expect(asked).toEqual([1, 2, 3, 2]);
});

test("what failed is asked anew", async () => {
  const { asked, remembered } = doubling();
  for (let k = 0; k < 2; k++) await expect(remembered.ask({ value: -1 })).rejects.toThrow("below nought");
  expect(asked).toEqual([-1, -1]);
});
