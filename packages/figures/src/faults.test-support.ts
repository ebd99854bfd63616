import { intersects } from "./svg/text.js";
import { drawnPlaces, malformed, textsOf, viewBoxOf } from "./svg-reading.test-support.js";

/** Coordinates are written in hundredths, so two boxes that touch may seem to overlap by one of them. */
const ROUNDING = 0.011;

/** Every reason why a figure would not do. */
export function faults(svg: string): string[] {
  const found: string[] = [];
  const bounds = viewBoxOf(svg);
  const texts = textsOf(svg);
  texts.forEach(({ content, box, size }, k) => {
    if (size < 12) found.push(`text of ${size} px: ${content}`);
    if (box.left < -ROUNDING || box.right > bounds.right + ROUNDING || box.top < 0 || box.bottom > bounds.bottom)
      found.push(`outside: ${content}`);
    for (const other of texts.slice(k + 1)) {
      const shrunk = { left: box.left + ROUNDING, right: box.right - ROUNDING, top: box.top + ROUNDING, bottom: box.bottom - ROUNDING };
      if (intersects(shrunk, other.box)) found.push(`overlap: ${content} | ${other.content}`);
    }
  });
  for (const { x, y } of drawnPlaces(svg)) {
    if (x < -ROUNDING || y < -ROUNDING || x > bounds.right + ROUNDING || y > bounds.bottom + ROUNDING)
      found.push(`drawn outside: ${x} ${y}`);
  }
  if (/NaN|Infinity|undefined|null|\[object/.test(svg)) found.push("no number");
  const xml = malformed(svg);
  if (xml) found.push(xml);
  return found;
}
