import { catalogueOf } from "@halfturn/words";
import { expect, test } from "vitest";
import { amplitudeText } from "./amplitude-text.js";

test("an amplitude is written in what its channel measures, small ones with a digit more", () => {
  const { numbers } = catalogueOf("en");
  expect(amplitudeText("acceleration", numbers)(0.98)).toBe("0.98\u00a0m/s²");
  expect(amplitudeText("velocity", numbers)(0.00125)).toBe("1.25\u00a0mm/s");
  expect(amplitudeText("displacement", numbers)(0.00004)).toBe("0.040\u00a0mm");
  expect(amplitudeText("pressure", numbers)(2)).toBe("2.00\u00a0Pa");
  expect(amplitudeText("share", numbers)(0.031)).toBe("3.10\u00a0%");
  expect(amplitudeText("velocity", catalogueOf("es").numbers)(0.00125)).toBe("1,25\u00a0mm/s");
});
