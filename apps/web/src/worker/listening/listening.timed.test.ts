import { expect, test, vi } from "vitest";
import { listening } from "./listening.js";
import { opened, quiet, request } from "./listening.test-support.js";

/** A browser without private files. */
vi.stubGlobal("navigator", {});

/** As the design promises. */
const STOP_MS = 100;

test("stops within a tenth of a second", async () => {
  await opened(120);
  const running = listening.hear(request({ kind: "column", id: "speed_mps" }), 40, quiet);
  await new Promise((resolve) => setTimeout(resolve, 30));
  const asked = performance.now();
  listening.stop(40);
  await expect(running).rejects.toMatchObject({ name: "AbortError" });
  expect(performance.now() - asked).toBeLessThan(STOP_MS);
});
