export type Attributes = Readonly<Record<string, string | number | undefined>>;

const ENTITIES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };
/** Whether XML 1.0 allows a character; half a surrogate pair is none. */
const allowedInXml = (sign: string): boolean => {
  const code = sign.codePointAt(0) as number;
  const half = code >= 0xd800 && code <= 0xdfff;
  return (code >= 0x20 || sign === "\t" || sign === "\n" || sign === "\r") && !half && code !== 0xfffe && code !== 0xffff;
};

/** What stays as it is, as nearly every text of a figure does. */
const PLAIN = /^(?!.* {2})[\w .,:;#%()/°+-]*$/;

/** Text as XML content or attribute value; whatever a user typed stays text. */
export function escapeText(text: string): string {
  if (PLAIN.test(text)) return text;
  return [...text]
    .map((sign) => (allowedInXml(sign) ? sign : "\ufffd"))
    .join("")
    .replace(/\s+/g, " ")
    .replace(/[&<>"']/g, (sign) => ENTITIES[sign] as string);
}

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
