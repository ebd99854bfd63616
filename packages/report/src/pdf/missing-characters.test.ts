import { expect, test } from "vitest";
import { missingCharacters } from "./missing-characters.js";

test("reads the characters that a refused archival PDF names", () => {
  const message =
    'Error: [SourceDiagnostic { message: "PDF/A-2a error: the text `\\"漢\\"` could not be displayed with font `\\"Libertinus Serif\\"`" }, ' +
    'SourceDiagnostic { message: "PDF/A-2a error: the text `\\"\\\\u{200d}\\"` could not be displayed with font `\\"Libertinus Serif\\"`" }, ' +
    'SourceDiagnostic { message: "PDF/A-2a error: the text `\\"🔧\\"` could not be displayed with font `\\"Libertinus Serif\\"`" }]';
  expect([...missingCharacters(message)]).toEqual(["漢", "\u200d", "🔧"]);
});

test("a refusal for another reason names none", () => {
  expect(missingCharacters('Error: "PDF/A-2a error: the document is not tagged"').size).toBe(0);
});
