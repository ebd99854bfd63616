import type { Refusals } from "@halfturn/exchange";
import type { StoreFault } from "@halfturn/store";
import type { Context } from "hono";
import type { ContentfulStatusCode } from "hono/utils/http-status";
import { type RefusalCode, type RefusalParams, serverWords } from "../words/index.js";
import { acceptedLanguage } from "./accepted-language.js";

/** The status that each refusal has, whoever asks. */
const STATUS: Readonly<Record<RefusalCode, ContentfulStatusCode>> = {
  "not-found": 404,
  "app-missing": 404,
  "method-not-allowed": 405,
  "bad-request": 400,
  "case-unknown": 404,
  "case-put-away": 410,
  "case-not-put-away": 409,
  "case-exists": 409,
  "case-refused": 422,
  "id-unusable": 422,
  "id-differs": 422,
  "revision-unknown": 404,
  "tag-missing": 428,
  "tag-unreadable": 400,
  "case-changed": 412,
  "body-too-large": 413,
  "body-missing": 400,
  "wrong-content": 415,
  "device-name-unreadable": 400,
  "picture-unknown": 404,
  "picture-name-unusable": 422,
  "picture-name-taken": 409,
  "picture-hash-differs": 422,
  "picture-kind-unknown": 415,
  "picture-damaged": 422,
  "picture-too-large": 422,
  "too-many-pictures": 409,
  "nothing-to-report": 409,
  "report-failed": 500,
  "host-refused": 421,
  "origin-refused": 403,
  "too-many-listeners": 503,
  "not-paired": 401,
  "home-only": 403,
  "no-lan": 409,
  "code-refused": 403,
  "too-many-tries": 429,
  "device-unknown": 404,
  stopping: 503,
  "server-fault": 500,
};

export const PROBLEM_JSON = "application/problem+json";

export const languageOfRequest = (c: Context) => acceptedLanguage(c.req.header("accept-language"));

/** Answers with a refusal, in the language of whoever asks. */
export function refuse<Code extends RefusalCode>(
  c: Context,
  code: Code,
  params: RefusalParams[Code],
  more: { readonly path?: string; readonly problems?: Refusals["problems"] } = {},
): Response {
  const words = serverWords[languageOfRequest(c)].refusals[code] as (params: RefusalParams[Code]) => string;
  const body: Refusals = {
    code,
    path: more.path ?? "",
    params: { ...params },
    message: words(params),
    ...(more.problems === undefined ? {} : { problems: more.problems }),
  };
  return problem(c, body, STATUS[code]);
}

/** What may be over by itself, or once somebody has put a file back. */
const PASSING: readonly StoreFault["code"][] = ["database-unreachable", "database-busy", "file-missing"];

/** Answers a request that the database failed: 507 for a full disk, 503 where waiting may help. */
export function refuseForFault(c: Context, { code }: StoreFault): Response {
  const status = code === "disk-full" ? 507 : PASSING.includes(code) ? 503 : 500;
  if (status === 503) c.header("retry-after", "2");
  return problem(c, { code, path: "", params: {}, message: serverWords[languageOfRequest(c)].faults[code] }, status);
}

function problem(c: Context, body: Refusals, status: ContentfulStatusCode): Response {
  c.header("cache-control", "no-store");
  return c.body(JSON.stringify(body), status, { "content-type": PROBLEM_JSON, "content-language": languageOfRequest(c) });
}
