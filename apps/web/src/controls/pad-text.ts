/** What a key of the number pad does to what was typed. */
export type PadKey = "0" | "1" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9" | "point" | "blank" | "slash" | "back" | "clear";

/** No display and no tape has more digits. */
const LONGEST = 9;

/** Text after a key. A second decimal sign is ignored, and a leading one gets its nought. */
export function afterKey(text: string, key: PadKey, decimalSign: "." | ","): string {
  if (key === "clear") return "";
  if (key === "back") return text.slice(0, -1);
  if (text.length >= LONGEST) return text;
  if (key === "point") return /[.,]/.test(text) ? text : `${text === "" ? "0" : text}${decimalSign}`;
  if (key === "blank") return text === "" || text.endsWith(" ") ? text : `${text} `;
  if (key === "slash") return /\d$/.test(text) && !text.includes("/") ? `${text}/` : text;
  return `${text === "0" ? "" : text}${key}`;
}
