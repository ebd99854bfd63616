import { Buffer } from "node:buffer";
import { inflateSync } from "node:zlib";

/** What a PDF file says of itself, read from its objects. Enough of the format (ISO 32000-1, section 7) for the files that the product writes. */
export interface PdfFacts {
  readonly header: string;
  readonly catalogue: string;
  readonly xmp: string;
  readonly mediaBoxes: readonly string[];
  readonly fonts: readonly { readonly name: string; readonly embedded: boolean }[];
  readonly images: number;
}

interface PdfObject {
  readonly dictionary: string;
  readonly stream: Buffer | null;
}

function objectsIn(pdf: Uint8Array): readonly PdfObject[] {
  const bytes = Buffer.from(pdf);
  const text = bytes.toString("latin1");
  const found: PdfObject[] = [];
  for (const match of text.matchAll(/(?:^|\n)\d+ 0 obj\s([\s\S]*?)(?:stream\r?\n|endobj)/g)) {
    const dictionary = match[1] as string;
    const start = match.index + match[0].length;
    const length = /\/Length (\d+)/.exec(dictionary)?.[1];
    const raw = match[0].endsWith("endobj") || length === undefined ? null : bytes.subarray(start, start + Number(length));
    found.push({ dictionary, stream: raw && dictionary.includes("/FlateDecode") ? inflateSync(raw) : raw });
  }
  return found;
}

export function pdfFacts(pdf: Uint8Array): PdfFacts {
  const objects = objectsIn(pdf);
  const dictionaries = objects.map(({ dictionary }) => dictionary);
  const fontFiles = dictionaries.filter((one) => /\/Type \/FontDescriptor/.test(one));
  return {
    header: Buffer.from(pdf).subarray(0, 8).toString("latin1"),
    catalogue: dictionaries.find((one) => /\/Type\s*\/Catalog/.test(one)) ?? "",
    xmp: objects.find(({ dictionary }) => /\/Subtype\s*\/XML/.test(dictionary))?.stream?.toString("utf8") ?? "",
    mediaBoxes: dictionaries
      .filter((one) => /\/Type\s*\/Page\b/.test(one))
      .map((one) => /\/MediaBox\s*\[([^\]]*)\]/.exec(one)?.[1]?.trim() ?? ""),
    fonts: fontFiles.map((one) => ({ name: /\/FontName\s*\/(\S+)/.exec(one)?.[1] ?? "", embedded: /\/FontFile[23]?\s/.test(one) })),
    images: dictionaries.filter((one) => /\/Subtype\s*\/Image/.test(one)).length,
  };
}
