import { type Box, textBox } from "./svg/text.js";

export interface ReadText {
  readonly content: string;
  readonly box: Box;
  readonly size: number;
}

const ENTITIES: Readonly<Record<string, string>> = { "&amp;": "&", "&lt;": "<", "&gt;": ">", "&quot;": '"', "&#39;": "'" };
const plainText = (text: string): string => text.replace(/&(?:amp|lt|gt|quot|#39);/g, (entity) => ENTITIES[entity] as string);
const attributesOf = (tag: string): Record<string, string> =>
  Object.fromEntries([...tag.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key, value]) => [key, plainText(value as string)]));
const num = (value: string | undefined): number => Number(value ?? 0);

/** Every drawn text with the room it takes. */
export const textsOf = (svg: string): ReadText[] =>
  [...svg.matchAll(/<text([^>]*)>([^<]*)<\/text>/g)].map(([, tag, raw]) => {
    const a = attributesOf(tag as string);
    const content = plainText(raw as string);
    const size = num(a["font-size"]);
    return {
      content,
      size,
      box: textBox(num(a.x), num(a.y), content, size, a["font-weight"] === "600", (a["text-anchor"] ?? "start") as "start"),
    };
  });

export function viewBoxOf(svg: string): Box {
  const [left, top, width, height] = (/viewBox="([^"]*)"/.exec(svg)?.[1] ?? "").split(" ").map(Number) as [number, number, number, number];
  return { left, top, right: left + width, bottom: top + height };
}

type Place = { x: number; y: number };
const around = (x: number, y: number, half: number): Place[] => [
  { x: x - half, y: y - half },
  { x: x + half, y: y + half },
];

/** End and control points of a path of absolute M, L, C, A and Z. */
function pathPlaces(d: string, half: number): Place[] {
  return [...d.matchAll(/([A-Za-z])([^A-Za-z]*)/g)].flatMap(([, command, list]) => {
    if (!/[MLCAZ]/.test(command as string)) throw new Error(`path command ${command} is not read here`);
    const numbers = (list?.match(/-?\d*\.?\d+(?:e-?\d+)?/g) ?? []).map(Number);
    const pairs = command === "A" ? numbers.slice(5) : numbers;
    return pairs.flatMap((x, k) => (k % 2 === 0 ? around(x, pairs[k + 1] as number, half) : []));
  });
}

/** Corner places of every path, circle and rectangle, half their stroke included. */
export function drawnPlaces(svg: string): Place[] {
  return [...svg.matchAll(/<(path|circle|rect)\b([^>]*?)\/?>/g)].flatMap(([, tag, raw]) => {
    const a = attributesOf(raw as string);
    const half = a.stroke === undefined ? 0 : num(a["stroke-width"]) / 2;
    if (tag === "circle") return around(num(a.cx), num(a.cy), num(a.r) + half);
    if (tag === "path") return pathPlaces(a.d ?? "", half);
    return [...around(num(a.x), num(a.y), 0), ...around(num(a.x) + num(a.width), num(a.y) + num(a.height), 0)];
  });
}

/** The first thing that keeps a text from being well-formed XML, or null. */
export function malformed(svg: string): string | null {
  const open: string[] = [];
  const rest = svg.replace(
    /<(\/?)([\w-]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/g,
    (_, closing: string, name: string, _attributes: string, empty: string) => {
      if (closing === "/") {
        if (open.pop() !== name) open.push(`</${name}>`);
      } else if (empty !== "/") open.push(name);
      return "";
    },
  );
  if (open.length > 0) return `unclosed ${open.join(" ")}`;
  const stray = /[<>]|&(?!(?:amp|lt|gt|quot|#39);)/.exec(rest);
  return stray ? `stray ${rest.slice(stray.index, stray.index + 20)}` : null;
}
