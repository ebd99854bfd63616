// Unit tests share their processes: whatever a file puts in the place of a global, of the environment or of a method, the next one finds as it was.
import { afterAll, vi } from "vitest";

afterAll(() => {
  vi.unstubAllGlobals();
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});
