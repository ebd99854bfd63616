import { expect, test } from "vitest";
import { catalogues } from "./catalogues.js";
import { placeInWords } from "./place-in-words.js";

test.each([
  ["gauging[0].readings[2].deg", "reading 3 of gauging 1", "lectura 3, medición 1"],
  ["gauging[1].gauge.zeroCheck[0]", "reading 1 of the turn-round check of gauging 2", "lectura 1 de la comprobación del cero, medición 2"],
  ["drivelines[0].sections[1].tube.wallMm", "section 2 of driveline 1", "tramo 2, línea 1"],
  ["complaint.feel[1]", 'entry 2 of "feel"', 'entrada 2 de "feel"'],
  ["adjusters[3]", "adjuster 4", "ajuste 4"],
])("%s is %s", (path, en, es) => {
  expect(placeInWords(catalogues.en.phrases, path)).toBe(en);
  expect(placeInWords(catalogues.es.phrases, path)).toBe(es);
});

test.each(["", "vehicle.axleRatio", 'vehicle["odd key"]'])("%j goes through no list", (path) => {
  expect(placeInWords(catalogues.en.phrases, path)).toBeNull();
});
