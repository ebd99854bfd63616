import fc from "fast-check";
import { expect, test } from "vitest";
import { freeId } from "./free-id.js";

test("an id is made from the name, and told apart from those that are there", () => {
  expect(freeId("Laden, two crates", [], "state")).toBe("laden-two-crates");
  expect(freeId("Cargado: día 2", [], "state")).toBe("cargado-dia-2");
  expect(freeId("Laden", ["laden", "laden-2"], "state")).toBe("laden-3");
  expect(freeId("1500 kg", [], "state")).toBe("kg");
  expect(freeId("荷重", [], "state")).toBe("state");
});

test("whatever it is called, the case file takes the id, and it is a new one", () => {
  fc.assert(
    fc.property(fc.string(), fc.array(fc.string()), (name, taken) => {
      const id = freeId(name, taken, "part");
      return /^[a-z][a-z0-9-]*$/.test(id) && id.length <= 60 && !taken.includes(id);
    }),
    { seed: 1 },
  );
});
