import { expect, test } from "vitest";
import { caseFileName } from "./case-file-name.js";

test("a file is named after the case, in letters that every system keeps", () => {
  expect(caseFileName({ id: "x", title: "Crane truck 3: rumble / 65 km/h" })).toBe("Crane-truck-3-rumble-65-km-h.halfturn.json");
  expect(caseFileName({ id: "x", title: "Vibración en el camión" })).toBe("Vibración-en-el-camión.halfturn.json");
  expect(caseFileName({ id: "case-7", title: " ?! " })).toBe("case-7.halfturn.json");
});
