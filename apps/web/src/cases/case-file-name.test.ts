import { expect, test } from "vitest";
import { caseFileName } from "./case-file-name.js";

test("a file is named after the case, in letters that every system keeps", () => {
  expect(caseFileName({ id: "x", title: "Crane truck 3: rumble / 65 km/h" }, "halfturn.json")).toBe(
    "Crane-truck-3-rumble-65-km-h.halfturn.json",
  );
  expect(caseFileName({ id: "x", title: "Vibración en el camión" }, "pdf")).toBe("Vibración-en-el-camión.pdf");
  expect(caseFileName({ id: "case-7", title: " ?! " }, "html")).toBe("case-7.html");
});
