export type Attributes = Readonly<Record<string, string | number | undefined>>;

const ENTITIES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };
/** Characters that XML 1.0 does not allow, half surrogate pairs among them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to keep out.
const NOT_XML = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** Text as XML content or attribute value; whatever a user typed stays text. */
export const escapeText = (text: string): string =>
  text
    .replace(NOT_XML, "\ufffd")
    .replace(/\s+/g, " ")
    .replace(/[&<>"']/g, (sign) => ENTITIES[sign] as string);

/** A coordinate in hundredths of a pixel: finer than anyone sees, and the same on every machine. */
export function coordinate(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError("a figure was given a coordinate that is no number");
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}

/** One element; undefined attributes are left out, text values escaped, numbers rounded. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? coordinate(value) : escapeText(String(value))}"`)
    .join("");
  const content = children.join("");
  return content === "" ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}
