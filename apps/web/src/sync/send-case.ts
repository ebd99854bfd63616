import { afterReceiving, afterSaving } from "../device/agree.js";
import type { OpenCase } from "../device/open-case.js";
import type { CaseServer, SaveAnswer } from "./case-server.js";

/** settled: nothing waits, or only for somebody to choose or change. unreachable: try again later. */
export type Sent = "settled" | "unreachable";

/** Two devices that save in turn without end would be a fault; so many rounds are no accident. */
const MOST_ROUNDS = 8;

/** Sends what waits of one case until both sides agree, a person has to choose, or the server cannot be reached. What is edited meanwhile is sent as well. */
export async function sendCase(open: OpenCase, server: CaseServer): Promise<Sent> {
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const { waiting, conflicts, refused } = open.record();
    if (!waiting || conflicts.length > 0 || refused !== null) return "settled";
    const answer = await sendOnce(open, server);
    if (!(await takeAnswer(open, server, answer))) return "unreachable";
  }
  return open.record().waiting ? "unreachable" : "settled";
}

type Step = SaveAnswer & { readonly sent?: ReturnType<OpenCase["record"]>["document"] };

async function sendOnce(open: OpenCase, server: CaseServer): Promise<Step> {
  const { document, base, revision, putAway, id } = open.record();
  if (putAway && (revision === null || document === base)) {
    // Never sent, so there is nothing to put away but here.
    return revision === null ? { is: "put-away" } : server.putAway(id, revision);
  }
  return { ...(await (revision === null ? server.create(document) : server.save(document, revision))), sent: document };
}

/** false: the server could not be reached. */
async function takeAnswer(open: OpenCase, server: CaseServer, answer: Step): Promise<boolean> {
  const { id } = open.record();
  switch (answer.is) {
    case "saved": {
      const { sent } = answer;
      open.update((record) =>
        sent ? waitingToPutAway(afterSaving(record, sent, answer.revision)) : { ...record, revision: answer.revision, waiting: 0 },
      );
      return true;
    }
    case "conflict":
      open.update((record) => waitingToPutAway(afterReceiving(record, answer.current)));
      return true;
    case "exists":
      return receive(open, server);
    case "unknown":
      open.update((record) => ({ ...record, revision: null, base: null, waiting: record.putAway ? 0 : 1 }));
      return true;
    case "put-away":
      if (open.record().putAway) {
        open.update((record) => ({ ...record, waiting: 0 }));
        return true;
      }
      // Somebody put it away, somebody else still works on it: the work counts.
      return (await server.bringBack(id)).is === "unreachable" ? false : receive(open, server);
    case "refused":
      open.update((record) => ({ ...record, refused: answer.message }));
      return true;
    case "unreachable":
      return false;
  }
}

const waitingToPutAway = <R extends ReturnType<OpenCase["record"]>>(record: R): R =>
  record.putAway && record.conflicts.length === 0 ? { ...record, waiting: 1 } : record;

/** Takes in what the server holds. false: it could not be reached. */
export async function receive(open: OpenCase, server: CaseServer): Promise<boolean> {
  const answer = await server.read(open.record().id);
  if (answer.is === "unreachable") return false;
  if (answer.is === "held") {
    const { held } = answer;
    open.update((record) => (held.revision > (record.revision ?? 0) ? afterReceiving(record, held) : record));
  }
  if (answer.is === "put-away") open.update((record) => (record.waiting ? record : { ...record, putAway: 1 }));
  return true;
}
