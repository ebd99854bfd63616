import { expect, test } from "vitest";
import { readChosen } from "./chosen-settings.js";
import { type DevicePreferences, settingsOf } from "./settings.js";

const device = (languages: readonly string[], more: Partial<DevicePreferences> = {}): DevicePreferences => ({
  languages,
  dark: false,
  moreContrast: false,
  ...more,
});

test("what was not chosen follows the device", () => {
  expect(settingsOf({}, device(["es-MX", "en"]))).toEqual({ language: "es", units: "metric", theme: "light" });
  expect(settingsOf({}, device(["en-US"], { dark: true }))).toEqual({ language: "en", units: "us", theme: "dark" });
  expect(settingsOf({}, device(["de-DE", "es"], { dark: true, moreContrast: true }))).toEqual({
    language: "es",
    units: "metric",
    theme: "contrast",
  });
  expect(settingsOf({}, device([]))).toEqual({ language: "en", units: "metric", theme: "light" });
});

test("what was chosen counts, whatever the device says", () => {
  expect(settingsOf({ language: "en", units: "metric", theme: "light" }, device(["es-US"], { dark: true }))).toEqual({
    language: "en",
    units: "metric",
    theme: "light",
  });
});

test("what was kept by another version, or by nobody, does no harm", () => {
  expect(readChosen(null)).toEqual({});
  expect(readChosen("not json")).toEqual({});
  expect(readChosen("null")).toEqual({});
  expect(readChosen('{"theme":"purple","language":"es","size":3}')).toEqual({ language: "es" });
});
