import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** The text of a PDF in the order of its content, without white space, as an independent reader sees it. */
export async function pdfText(pdf: Uint8Array): Promise<string> {
  const loading = getDocument({ data: Uint8Array.from(pdf), useSystemFonts: false, verbosity: 0 });
  const document = await loading.promise;
  let text = "";
  for (let number = 1; number <= document.numPages; number++) {
    const { items } = await (await document.getPage(number)).getTextContent();
    text += items.map((item) => ("str" in item ? item.str : "")).join("");
  }
  await loading.destroy();
  return text.replaceAll(/\s/g, "");
}
