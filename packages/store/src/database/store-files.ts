export const HOLD_ENDING = "-serving";

/** What lies beside a SQLite file while it is used or after its program was killed, and the file itself. */
export const storeFiles = (file: string): readonly string[] => ["", "-wal", "-shm", "-journal", HOLD_ENDING].map((ending) => file + ending);
