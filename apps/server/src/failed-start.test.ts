import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test, vi } from "vitest";
import { serverSettings } from "./shop.test-support.js";
import { startServer } from "./start-server.js";

const { following } = vi.hoisted(() => {
  // What another test file loaded in this process already would go on with the true follower.
  vi.resetModules();
  return { following: { count: 0 } };
});
vi.mock("./events/follow-store.js", () => ({
  followStore: () => {
    following.count += 1;
    return () => {
      following.count -= 1;
    };
  },
}));

const folder = mkdtempSync(join(tmpdir(), "halfturn-failed-start-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("a start that fails once the store is open leaves nobody asking the store, and frees port and folder", async () => {
  const settings = serverSettings({ folder });
  const now = (): string => {
    throw new Error("the clock is broken");
  };
  await expect(startServer({ ...settings, now })).rejects.toThrow("the clock is broken");
  expect(following.count).toBe(0);
  const server = await startServer(settings);
  expect(following.count).toBe(1);
  await server.stop();
  expect(following.count).toBe(0);
});
