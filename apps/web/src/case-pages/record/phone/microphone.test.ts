import { expect, test, vi } from "vitest";
import { recordMicrophone } from "./microphone.js";

test("a microphone that cannot be recorded is let go of", async () => {
  const stop = vi.fn();
  const close = vi.fn(async () => undefined);
  vi.stubGlobal("navigator", { mediaDevices: { getUserMedia: async () => ({ getTracks: () => [{ stop }] }) } });
  vi.stubGlobal(
    "AudioContext",
    class {
      readonly audioWorklet = { addModule: () => Promise.reject(new Error("offline")) };
      readonly close = close;
    },
  );
  await expect(recordMicrophone()).rejects.toThrow("offline");
  expect([stop.mock.calls.length, close.mock.calls.length]).toEqual([1, 1]);
  vi.unstubAllGlobals();
});
