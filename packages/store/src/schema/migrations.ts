import type { Kysely, Migration } from "kysely";
import { sql } from "kysely";
import type { SearchIndex } from "../search/search-index.js";

/** What differs between the engines while tables are made. */
export interface MigrationSettings {
  /** The engine's name for a column of bytes. */
  readonly bytesType: "blob" | "bytea";
  readonly search: SearchIndex;
}

/** Every step from an empty database to the newest, by name. After a release a step is never edited, only followed by another. */
export const migrationsFor = (settings: MigrationSettings): Readonly<Record<string, Migration>> => ({
  "0001-cases": casesAndHistory(settings),
  "0002-devices": devices,
});

const casesAndHistory = ({ bytesType, search }: MigrationSettings): Migration => ({
  up: async (db: Kysely<unknown>) => {
    const schema = db.schema;
    await schema
      .createTable("counter")
      .addColumn("name", "text", (column) => column.primaryKey())
      .addColumn("value", "integer", (column) => column.notNull())
      .execute();
    await sql`insert into counter (name, value) values ('sequence', 0)`.execute(db);
    await schema
      .createTable("cases")
      .addColumn("id", "text", (column) => column.primaryKey())
      .addColumn("sequence", "integer", (column) => column.notNull())
      .addColumn("revision", "integer", (column) => column.notNull())
      .addColumn("last_revision", "integer", (column) => column.notNull())
      .addColumn("removed", "integer", (column) => column.notNull())
      .addColumn("title", "text", (column) => column.notNull())
      .addColumn("vehicle", "text")
      .addColumn("gauged", "integer", (column) => column.notNull())
      .addColumn("corrected", "integer", (column) => column.notNull())
      .addColumn("proved", "integer", (column) => column.notNull())
      .addColumn("saved_at", "text", (column) => column.notNull())
      .addColumn("saved_by", "text", (column) => column.notNull())
      .execute();
    await schema.createIndex("cases_newest").on("cases").columns(["removed", "sequence"]).execute();
    await schema.createIndex("cases_sequence").on("cases").column("sequence").unique().execute();
    await schema
      .createTable("revisions")
      .addColumn("case_id", "text", (column) => column.notNull().references("cases.id"))
      .addColumn("revision", "integer", (column) => column.notNull())
      .addColumn("sequence", "integer", (column) => column.notNull())
      .addColumn("kind", "text", (column) => column.notNull())
      .addColumn("saved_at", "text", (column) => column.notNull())
      .addColumn("saved_by", "text", (column) => column.notNull())
      .addColumn("document", "text", (column) => column.notNull())
      .addColumn("hash", "text", (column) => column.notNull())
      .addPrimaryKeyConstraint("revisions_key", ["case_id", "revision"])
      .execute();
    await schema.createIndex("revisions_sequence").on("revisions").column("sequence").unique().execute();
    await schema
      .createTable("pictures")
      .addColumn("hash", "text", (column) => column.primaryKey())
      .addColumn("type", "text", (column) => column.notNull())
      .addColumn("bytes", "integer", (column) => column.notNull())
      .addColumn("content", sql.raw(bytesType), (column) => column.notNull())
      .execute();
    await schema
      .createTable("attachments")
      .addColumn("case_id", "text", (column) => column.notNull().references("cases.id"))
      .addColumn("name", "text", (column) => column.notNull())
      .addColumn("hash", "text", (column) => column.notNull().references("pictures.hash"))
      .addColumn("saved_at", "text", (column) => column.notNull())
      .addColumn("saved_by", "text", (column) => column.notNull())
      .addPrimaryKeyConstraint("attachments_key", ["case_id", "name"])
      .execute();
    await schema.createIndex("attachments_hash").on("attachments").column("hash").execute();
    await search.create(db);
  },
});

const devices: Migration = {
  up: async (db: Kysely<unknown>) => {
    await db.schema
      .createTable("devices")
      .addColumn("id", "text", (column) => column.primaryKey())
      .addColumn("name", "text", (column) => column.notNull())
      .addColumn("token_hash", "text", (column) => column.notNull().unique())
      .addColumn("paired_at", "text", (column) => column.notNull())
      .addColumn("last_seen_at", "text", (column) => column.notNull())
      .execute();
  },
};
