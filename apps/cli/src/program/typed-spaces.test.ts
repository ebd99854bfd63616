import { PassThrough } from "node:stream";
import { expect, test } from "vitest";
import { jsonText } from "./json-text.js";
import { typedSpaces } from "./typed-spaces.js";

const printed = (...texts: readonly string[]): string => {
  const stream = new PassThrough();
  const printing = typedSpaces(stream as unknown as NodeJS.WriteStream);
  for (const text of texts) printing.write(text);
  return String(stream.read());
};

test("what is printed can be searched for as it is typed, whatever it begins with", () => {
  expect(printed("Motion at 3600\u00a0rpm\n")).toBe("Motion at 3600 rpm\n");
  expect(printed("{bay 2}.json: 85\u00a0km/h\n")).toBe("{bay 2}.json: 85 km/h\n");
});

test("JSON says what it said, also below a line of text", () => {
  const said = { title: "85\u00a0km/h" };
  expect(JSON.parse(printed(jsonText(said)))).toEqual(said);
  const [line = "", ...json] = printed(`Put at 3\u00a0s:\n${jsonText(said)}`).split("\n");
  expect(line).toBe("Put at 3 s:");
  expect(JSON.parse(json.join("\n"))).toEqual(said);
});

test("the rest of the stream is its own", () => {
  const stream = Object.assign(new PassThrough(), { columns: 72 });
  expect(typedSpaces(stream as unknown as NodeJS.WriteStream).columns).toBe(72);
});
