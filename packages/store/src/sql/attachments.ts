import type { Attachment } from "@halfturn/exchange";
import type { Kysely, Transaction } from "kysely";
import type { Attached, By, NewPicture, Picture } from "../case-store.js";
import type { AttachmentTable, PictureTable, Tables } from "../schema/tables.js";
import { nextSequence } from "./changes.js";
import { rowOf } from "./read-rows.js";

/** More pictures of one driveline than anybody takes; it keeps a faulty program from filling the disk. */
const MOST_PICTURES = 200;

type Line = AttachmentTable & Omit<PictureTable, "content">;

const attachmentOf = (line: Line): Attachment => ({
  name: line.name,
  hash: line.hash,
  type: line.type as Attachment["type"],
  bytes: line.bytes,
  savedAt: line.saved_at,
  savedBy: line.saved_by,
});

const lines = (db: Kysely<Tables>, id: string) =>
  db
    .selectFrom("attachments")
    .innerJoin("pictures", "pictures.hash", "attachments.hash")
    .select([
      "attachments.case_id",
      "attachments.name",
      "attachments.hash",
      "attachments.saved_at",
      "attachments.saved_by",
      "pictures.type",
      "pictures.bytes",
    ])
    .where("attachments.case_id", "=", id)
    .orderBy("attachments.saved_at")
    .orderBy("attachments.name");

export async function attachmentsOf(db: Kysely<Tables>, id: string): Promise<readonly Attachment[] | null> {
  const row = await rowOf(db, id);
  if (row === null || row.removed === 1) return null;
  return (await lines(db, id).execute()).map(attachmentOf);
}

const named = (db: Kysely<Tables>, id: string, nameOrHash: string) =>
  lines(db, id).where((or) => or.or([or("attachments.name", "=", nameOrHash), or("attachments.hash", "=", nameOrHash)]));

export async function pictureOf(db: Kysely<Tables>, id: string, nameOrHash: string): Promise<Picture | null> {
  const line = await named(db, id, nameOrHash).executeTakeFirst();
  if (line === undefined) return null;
  const { content } = await db.selectFrom("pictures").select("content").where("hash", "=", line.hash).executeTakeFirstOrThrow();
  return { attachment: attachmentOf(line), content };
}

export async function attachPicture(transaction: Transaction<Tables>, id: string, picture: NewPicture, by: By): Promise<Attached> {
  // Taken for its lock: two devices may bring the same picture at once.
  await nextSequence(transaction);
  const row = await rowOf(transaction, id);
  if (row === null) return { ok: false, why: "unknown" };
  if (row.removed === 1) return { ok: false, why: "put-away", revision: row.revision };
  const all = await lines(transaction, id).execute();
  const sameName = all.find(({ name }) => name === picture.name);
  if (sameName !== undefined)
    return sameName.hash === picture.hash ? { ok: true, attachment: attachmentOf(sameName), isNew: false } : { ok: false, why: "taken" };
  if (all.length >= MOST_PICTURES) return { ok: false, why: "too-many" };
  const { name, hash, type, content } = picture;
  const bytes = content.byteLength;
  await transaction
    .insertInto("pictures")
    .values({ hash, type, bytes, content })
    .onConflict((conflict) => conflict.column("hash").doNothing())
    .execute();
  const line = { case_id: id, name, hash, saved_at: by.savedAt, saved_by: by.savedBy };
  await transaction.insertInto("attachments").values(line).execute();
  return { ok: true, attachment: attachmentOf({ ...line, type, bytes }), isNew: true };
}

export async function detachPicture(transaction: Transaction<Tables>, id: string, nameOrHash: string): Promise<boolean> {
  await nextSequence(transaction);
  const line = await named(transaction, id, nameOrHash).executeTakeFirst();
  if (line === undefined) return false;
  await transaction.deleteFrom("attachments").where("case_id", "=", id).where("name", "=", line.name).execute();
  const others = await transaction.selectFrom("attachments").select("hash").where("hash", "=", line.hash).limit(1).executeTakeFirst();
  if (others === undefined) await transaction.deleteFrom("pictures").where("hash", "=", line.hash).execute();
  return true;
}
