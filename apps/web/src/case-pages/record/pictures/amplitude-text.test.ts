import { catalogueOf } from "@halfturn/words";
import { expect, test } from "vitest";
import { amplitudeText } from "./amplitude-text.js";

test("an amplitude is written in what its channel measures, small ones with a digit more", () => {
  const { numbers } = catalogueOf("en");
  expect(amplitudeText("acceleration", numbers)(0.98)).toBe("0.98 m/s²");
  expect(amplitudeText("velocity", numbers)(0.00125)).toBe("1.25 mm/s");
  expect(amplitudeText("displacement", numbers)(0.00004)).toBe("0.040 mm");
  expect(amplitudeText("pressure", numbers)(2)).toBe("2.00 Pa");
  expect(amplitudeText("share", numbers)(0.031)).toBe("3.10 %");
  expect(amplitudeText("velocity", catalogueOf("es").numbers)(0.00125)).toBe("1,25 mm/s");
});
