import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** The text of each page of a PDF in the order of its content, without white space, as an independent reader sees it. */
export async function pdfPages(pdf: Uint8Array): Promise<readonly string[]> {
  const loading = getDocument({ data: Uint8Array.from(pdf), useSystemFonts: false, verbosity: 0 });
  const document = await loading.promise;
  const pages: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const { items } = await (await document.getPage(number)).getTextContent();
    pages.push(
      items
        .map((item) => ("str" in item ? item.str : ""))
        .join("")
        .replaceAll(/\s/g, ""),
    );
  }
  await loading.destroy();
  return pages;
}

/** The text of all pages. */
export const pdfText = async (pdf: Uint8Array): Promise<string> => (await pdfPages(pdf)).join("");
