import { expect, test } from "vitest";
import { type DraftStorage, newDraftStore } from "./draft-store.js";

function storageOf(texts: Map<string, string>): DraftStorage {
  return {
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, text) => void texts.set(key, text),
    removeItem: (key) => void texts.delete(key),
    key: (index) => [...texts.keys()][index] ?? null,
    get length() {
      return texts.size;
    },
  };
}

test("a draft outlives the page, and is gone from the storage once it is taken away", () => {
  const texts = new Map<string, string>();
  newDraftStore(() => storageOf(texts)).write("a case/describe/length", { text: "11" });
  const afterReload = newDraftStore(() => storageOf(texts));
  expect(afterReload.read("a case/describe/length")).toEqual({ text: "11" });
  expect(afterReload.read("another case/describe/length")).toBeNull();
  afterReload.write("a case/describe/length", null);
  expect(afterReload.read("a case/describe/length")).toBeNull();
  expect(texts.size).toBe(0);
});

test("a storage that is refused costs the reload, not the change of page", () => {
  const refused = newDraftStore(() => {
    throw new DOMException("refused", "SecurityError");
  });
  refused.write("k", "half");
  expect(refused.read("k")).toBe("half");
  refused.write("k", null);
  expect(refused.read("k")).toBeNull();
});

test("a full storage keeps no older text instead of the newest", () => {
  const texts = new Map<string, string>();
  const room = { left: true };
  const storage: DraftStorage = {
    ...storageOf(texts),
    setItem: (key, text) => {
      if (!room.left) throw new DOMException("full", "QuotaExceededError");
      texts.set(key, text);
    },
  };
  const store = newDraftStore(() => storage);
  store.write("k", "1");
  room.left = false;
  store.write("k", "12");
  expect(store.read("k")).toBe("12");
  expect(newDraftStore(() => storage).read("k")).toBeNull();
});

test("what another version wrote, or nobody, does no harm", () => {
  const texts = new Map([["halfturn-draft:k", "{not json"]]);
  expect(newDraftStore(() => storageOf(texts)).read("k")).toBeNull();
});

test("what is half typed in a row goes with the row, also after a reload, and leaves its neighbours alone", () => {
  const texts = new Map([["somebody-elses", "1"]]);
  const before = newDraftStore(() => storageOf(texts));
  before.write("gear 1/ratio", "4x");
  before.write("gear 10/ratio", "1x");
  const store = newDraftStore(() => storageOf(texts));
  store.move("gear 1", "gear low");
  expect([store.read("gear 1/ratio"), store.read("gear low/ratio"), store.read("gear 10/ratio")]).toEqual([null, "4x", "1x"]);
  store.move("gear low", null);
  expect([store.read("gear low/ratio"), store.read("gear 10/ratio")]).toEqual([null, "1x"]);
  expect([...texts.keys()]).toEqual(["somebody-elses", "halfturn-draft:gear 10/ratio"]);
});
