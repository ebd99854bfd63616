import { homedir } from "node:os";
import { join } from "node:path";

type Env = Readonly<Record<string, string | undefined>>;

/** Where a user's programs keep their data on each system (XDG Base Directory Specification; Apple and Microsoft have folders of their own). */
export function dataFolder(env: Env, platform: NodeJS.Platform, home: string = homedir()): string {
  if (platform === "win32") return join(env.LOCALAPPDATA ?? join(home, "AppData", "Local"), "Halfturn");
  if (platform === "darwin") return join(home, "Library", "Application Support", "Halfturn");
  // Relative ones are to be ignored, says the specification.
  const xdg = env.XDG_DATA_HOME?.startsWith("/") ? env.XDG_DATA_HOME : join(home, ".local", "share");
  return join(xdg, "halfturn");
}
