import type { ExampleCase } from "@halfturn/casefile";
import { shelf } from "../device/device.js";
import { restoreCase } from "../worker/worker-client.js";

/** Puts an example among the cases of this device, unless it is there, and says under which id. Null where it cannot be read. */
export async function openExample({ url }: ExampleCase): Promise<string | null> {
  const answer = await fetch(url);
  if (!answer.ok) return null;
  const restored = await restoreCase(await answer.text());
  if (!restored.ok) return null;
  const open = await shelf.add(restored.case, { revision: null });
  if (open.record().putAway) open.putAway(false);
  return open.record().id;
}
