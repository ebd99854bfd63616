import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** The text of every page of a PDF, in reading order as far as the file has it. */
export async function pdfText(bytes: Uint8Array): Promise<string> {
  const pdf = await getDocument({ data: bytes, useSystemFonts: false, verbosity: 0 }).promise;
  const pages: string[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const { items } = await (await pdf.getPage(number)).getTextContent();
    pages.push(items.map((item) => ("str" in item ? item.str : "")).join(" "));
  }
  return pages.join("\n").replaceAll(/\s+/g, " ");
}
