import type { Case } from "@halfturn/casefile";
import { type CaseList, type CaseRevision, DEVICE_HEADER, type Refusals, type SaveConflict } from "@halfturn/exchange";
import type { Held } from "../device/agree.js";

/** What became of a change that was sent. */
export type SaveAnswer =
  | { readonly is: "saved"; readonly revision: number }
  /** Another save came first; this is what the server holds. */
  | { readonly is: "conflict"; readonly current: Held }
  | { readonly is: "exists" | "put-away" | "unknown" | "unreachable" }
  /** The server will not have it as it is. */
  | { readonly is: "refused"; readonly message: string };

export type ReadAnswer =
  | { readonly is: "held"; readonly held: Held }
  | { readonly is: "put-away" | "unknown" | "unreachable" }
  | { readonly is: "refused"; readonly message: string };

export interface ListRequest {
  readonly words: string;
  readonly after: string | null;
  readonly putAway?: boolean;
}

/** The shop's server, as a device sees it. Nothing here throws: a server that cannot be reached is an answer. */
export interface CaseServer {
  readonly list: (request: ListRequest) => Promise<CaseList | null>;
  readonly read: (id: string) => Promise<ReadAnswer>;
  readonly create: (document: Case) => Promise<SaveAnswer>;
  readonly save: (document: Case, revision: number) => Promise<SaveAnswer>;
  readonly putAway: (id: string, revision: number) => Promise<SaveAnswer>;
  readonly bringBack: (id: string) => Promise<SaveAnswer>;
}

export interface ServerConnection {
  readonly fetch: typeof fetch;
  /** The name under which this device saves. */
  readonly device: () => string;
  readonly language: () => string;
  /** The server answers, but this device was not let in. */
  readonly onNotPaired: () => void;
}

/** Longer than this nobody waits under a vehicle; the change is kept and sent later. */
const TIMEOUT_MS = 15_000;

const placeOf = (id: string): string => `/api/cases/${encodeURIComponent(id)}`;
const tagOf = (revision: number): string => `"${revision}"`;

const NOT_PAIRED = 401;

export function caseServer({ fetch, device, language, onNotPaired }: ServerConnection): CaseServer {
  const ask = async (path: string, init: RequestInit = {}): Promise<Response | null> => {
    try {
      const answer = await fetch(path, {
        ...init,
        signal: AbortSignal.timeout(TIMEOUT_MS),
        headers: {
          ...(init.headers as Readonly<Record<string, string>> | undefined),
          accept: "application/json",
          "accept-language": language(),
          [DEVICE_HEADER]: encodeURIComponent(device()),
        },
      });
      if (answer.status === NOT_PAIRED) {
        onNotPaired();
        return null;
      }
      // Something answered, but not the shop's server: a proxy, or the login page of a guest network.
      return answer.headers.get("content-type")?.includes("json") ? answer : null;
    } catch {
      return null;
    }
  };
  const change = async (path: string, method: string, sent?: Case, revision?: number): Promise<SaveAnswer> => {
    const headers = {
      ...(sent ? { "content-type": "application/json" } : {}),
      ...(revision === undefined ? {} : { "if-match": tagOf(revision) }),
    };
    const answer = await ask(path, { method, headers, ...(sent ? { body: JSON.stringify(sent) } : {}) });
    return answer ? saveAnswer(answer) : { is: "unreachable" };
  };
  return {
    list: async ({ words, after, putAway = false }) => {
      const query = new URLSearchParams({ q: words, ...(after === null ? {} : { after }), ...(putAway ? { "put-away": "true" } : {}) });
      const answer = await ask(`/api/cases?${query}`);
      return answer?.ok ? await bodyOf<CaseList>(answer) : null;
    },
    read: async (id) => {
      const answer = await ask(placeOf(id));
      if (!answer) return { is: "unreachable" };
      if (answer.ok) {
        const document = await bodyOf<Case>(answer);
        const revision = Number(/\d+/.exec(answer.headers.get("etag") ?? "")?.[0]);
        return document && revision > 0 ? { is: "held", held: { document, revision } } : { is: "unreachable" };
      }
      return (await gone(answer)) ?? { is: "unreachable" };
    },
    create: (document) => change("/api/cases", "POST", document),
    save: (document, revision) => change(placeOf(document.id), "PUT", document, revision),
    putAway: (id, revision) => change(placeOf(id), "DELETE", undefined, revision),
    bringBack: (id) => change(`${placeOf(id)}/bring-back`, "POST"),
  };
}

/** null where the answer broke off. */
async function bodyOf<Body>(answer: Response): Promise<Body | null> {
  try {
    return (await answer.json()) as Body;
  } catch {
    return null;
  }
}

async function saveAnswer(answer: Response): Promise<SaveAnswer> {
  if (answer.ok) {
    const saved = await bodyOf<CaseRevision>(answer);
    return saved ? { is: "saved", revision: saved.revision } : { is: "unreachable" };
  }
  if (answer.status === 412) {
    const conflict = await bodyOf<Pick<SaveConflict, "current">>(answer);
    return conflict ? { is: "conflict", current: conflict.current } : { is: "unreachable" };
  }
  if (answer.status === 409) return { is: "exists" };
  return (await gone(answer)) ?? { is: "unreachable" };
}

/** null where trying again later may help. */
async function gone(
  answer: Response,
): Promise<{ readonly is: "put-away" | "unknown" } | { readonly is: "refused"; readonly message: string } | null> {
  if (answer.status === 404) return { is: "unknown" };
  if (answer.status === 410) return { is: "put-away" };
  if (answer.status >= 500 || answer.status === 429 || answer.status === 408) return null;
  const refusal = await bodyOf<Refusals>(answer);
  return { is: "refused", message: refusal?.problems?.[0]?.message ?? refusal?.message ?? `HTTP ${answer.status}` };
}
