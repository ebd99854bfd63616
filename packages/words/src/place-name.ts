import type { Case, CaseReading } from "@halfturn/casefile";
import type { Catalogue } from "./catalogue.js";
import type { NameOf } from "./name-of.js";
import type { PlaceWords } from "./phrases.js";

/** "the reading of Front section at its source end" for `gauging[0].readings[2]`; null for a place that no reading or measurement stands at. */
export function placeName(document: Case, path: string, nameOf: NameOf, { phrases }: Catalogue): string | null {
  const match = /^gauging\[(\d+)\]\.(readings|headings|gauge\.zeroCheck)\[(\d+)\]/.exec(path);
  if (!match) return null;
  const gauging = document.gauging?.[Number(match[1])];
  const item = Number(match[3]);
  const { places } = phrases;
  if (match[2] === "readings") return gauging ? readingName(gauging.readings, item, nameOf, places) : null;
  if (match[2] === "gauge.zeroCheck") return places.zeroCheck(item + 1);
  const heading = gauging?.headings?.[item];
  return heading ? places.heading(nameOf(heading.of)) : null;
}

/** The words alone where they tell the reading from all others; the side too, or its number in the list, where they do not. */
function readingName(readings: readonly CaseReading[], index: number, nameOf: NameOf, places: PlaceWords): string | null {
  const reading = readings[index];
  if (!reading) return null;
  const plain = (of: CaseReading): string => spotName(of, nameOf, places);
  const sided = (of: CaseReading): string => `${plain(of)}, ${places.from[of.side]}`;
  for (const say of [plain, sided]) if (readings.filter((other) => say(other) === say(reading)).length === 1) return say(reading);
  return `${plain(reading)} (${places.number(index + 1)})`;
}

function spotName(reading: CaseReading, nameOf: NameOf, places: PlaceWords): string {
  if ("between" in reading) return places.between(nameOf(reading.between[0]), nameOf(reading.between[1]));
  const [shaft = "", end] = reading.at.split(":");
  if ("face" in reading) return places.face(nameOf(shaft));
  return end === "source-end" || end === "driven-end" ? places.end[end](nameOf(shaft)) : places.reading(nameOf(shaft));
}
