import { expect, test } from "vitest";
import { inventedName } from "./device-name.js";

test("a device that nobody named says what it is, in the language of its reader", () => {
  const agents = ["Mozilla/5.0 (Linux; Android 15) Mobile", "Mozilla/5.0 (Linux; Android 15)", "Mozilla/5.0 (X11; Linux x86_64)"];
  expect(agents.map((agent) => inventedName(agent, 0x4f2, "en"))).toEqual(["Phone 04F2", "Tablet 04F2", "Computer 04F2"]);
  expect(agents.map((agent) => inventedName(agent, 0x4f2, "es"))).toEqual(["Teléfono 04F2", "Tableta 04F2", "Ordenador 04F2"]);
});
