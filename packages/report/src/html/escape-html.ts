import { showInvisible } from "../content/show-invisible.js";

const ENTITIES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

/** Text as it may stand in an element or in a quoted attribute; control characters that would turn the line round are shown as their codes. */
export const escapeHtml = (text: string): string => showInvisible(text).replace(/[&<>"']/g, (character) => ENTITIES[character] as string);
