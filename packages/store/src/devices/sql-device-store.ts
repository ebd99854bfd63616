import type { Kysely } from "kysely";
import type { DeviceTable, Tables } from "../schema/tables.js";
import type { Device, DeviceStore } from "./device-store.js";

/** Seen so lately that it need not be noted again: a device asks many times a minute, and each note is a write. */
const SEEN_AGAIN_MS = 60_000;

const deviceOf = ({ id, name, paired_at, last_seen_at }: DeviceTable): Device => ({
  id,
  name,
  pairedAt: paired_at,
  lastSeenAt: last_seen_at,
});

/** `guarded` makes what the engine throws a fault of the store. */
export function sqlDeviceStore(db: Kysely<Tables>, guarded: <Answer>(work: () => Promise<Answer>) => Promise<Answer>): DeviceStore {
  return {
    list: () =>
      guarded(async () =>
        (await db.selectFrom("devices").selectAll().orderBy("last_seen_at", "desc").orderBy("id").execute()).map(deviceOf),
      ),
    add: ({ id, name, tokenHash }, now) =>
      guarded(async () => {
        await db.insertInto("devices").values({ id, name, token_hash: tokenHash, paired_at: now, last_seen_at: now }).execute();
      }),
    byToken: (tokenHash, now) => guarded(() => seen(db, tokenHash, now)),
    sendAway: (id) =>
      guarded(async () => {
        const { numDeletedRows } = await db.deleteFrom("devices").where("id", "=", id).executeTakeFirstOrThrow();
        return numDeletedRows > 0n;
      }),
  };
}

async function seen(db: Kysely<Tables>, tokenHash: string, now: string): Promise<Device | null> {
  const row = await db.selectFrom("devices").selectAll().where("token_hash", "=", tokenHash).executeTakeFirst();
  if (row === undefined) return null;
  if (Date.parse(now) - Date.parse(row.last_seen_at) < SEEN_AGAIN_MS) return deviceOf(row);
  await db.updateTable("devices").set({ last_seen_at: now }).where("id", "=", row.id).execute();
  return { ...deviceOf(row), lastSeenAt: now };
}
