import type { Case } from "@halfturn/casefile";
import type { Language, Units } from "@halfturn/words";

export type Paper = "a4" | "letter";

/** `older`: the server has not yet got what was changed last on this device. */
export type PdfAnswer =
  | { readonly is: "made"; readonly pdf: Blob; readonly older: boolean }
  | { readonly is: "offline" | "unknown" | "refused" };

export interface PdfRequest {
  readonly language: Language;
  readonly units: Units;
  readonly paper: Paper;
}

/** The report as the shop's server prints it. Nothing here throws: a server that cannot be reached is an answer. */
export async function pdfOf(document: Case, { language, units, paper }: PdfRequest, ask: typeof fetch): Promise<PdfAnswer> {
  const place = `/api/cases/${encodeURIComponent(document.id)}`;
  try {
    const answer = await ask(`${place}/report.pdf?${new URLSearchParams({ language, units, paper })}`);
    if (answer.status === 404 || answer.status === 410) return { is: "unknown" };
    // A page of the app itself, or of a gateway, is no PDF.
    if (!answer.ok || !answer.headers.get("content-type")?.startsWith("application/pdf")) return { is: "refused" };
    const pdf = await answer.blob();
    return { is: "made", pdf, older: await isOlder(document, place, ask) };
  } catch {
    return { is: "offline" };
  }
}

/** What cannot be told is not claimed. */
async function isOlder(document: Case, place: string, ask: typeof fetch): Promise<boolean> {
  try {
    const answer = await ask(place, { headers: { accept: "application/json" } });
    return answer.ok && canonical(await answer.json()) !== canonical(document);
  } catch {
    return false;
  }
}

/** The same text for the same content, whatever order its keys came in. */
function canonical(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    typeof part === "object" && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}
