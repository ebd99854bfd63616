import { type Case, MAX_CASE_BYTES, type Problem, restore } from "@halfturn/casefile";
import { catalogueOf, problemText } from "@halfturn/words";
import type { Context } from "hono";
import { readBody } from "../http/read-body.js";
import { languageOfRequest, refuse } from "../http/refuse.js";

/** An id that can stand in an address and in a file's name on any system. */
const USABLE_ID = /^[A-Za-z0-9][A-Za-z0-9._-]{0,199}$/;
/** More would help nobody. */
const MOST_PROBLEMS = 100;

/** The case that a request carries, restored; or the refusal that says all that is wrong with it. */
export async function readCaseBody(c: Context): Promise<Case | Response> {
  const body = await readBody(c, MAX_CASE_BYTES);
  if (!body.ok) return refuse(c, "body-too-large", { limit: MAX_CASE_BYTES });
  if (body.bytes.byteLength === 0) return refuse(c, "body-missing", { what: "halfturn-case" });
  const restored = restore(new TextDecoder().decode(body.bytes));
  if (!restored.ok) return refuseProblems(c, restored.problems);
  const { id } = restored.case;
  return USABLE_ID.test(id) ? restored.case : refuse(c, "id-unusable", { id }, { path: "id" });
}

function refuseProblems(c: Context, problems: readonly Problem[]): Response {
  const words = catalogueOf(languageOfRequest(c));
  return refuse(
    c,
    "case-refused",
    { problems: problems.length },
    {
      problems: problems.slice(0, MOST_PROBLEMS).map((problem) => ({
        code: problem.code,
        path: problem.path,
        params: { ...problem.params },
        message: problemText(words, problem),
      })),
    },
  );
}
