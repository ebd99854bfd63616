const DISPLAYED = /the text `\\*"((?:\\\\*[^"\\]|[^"\\])+)\\*"` could not be displayed/gu;
const ESCAPED = /\\+u\{([0-9a-f]+)\}/gu;

/**
 * The characters that no font of the document has, read from the message of a refused archival PDF.
 * Such a PDF must map every character to a glyph, so the exporter names those that it cannot. Empty when it was refused for another reason.
 */
export function missingCharacters(message: string): ReadonlySet<string> {
  const found = new Set<string>();
  for (const [, quoted = ""] of message.matchAll(DISPLAYED)) {
    const text = quoted.replace(ESCAPED, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)));
    for (const character of text) found.add(character);
  }
  return found;
}
