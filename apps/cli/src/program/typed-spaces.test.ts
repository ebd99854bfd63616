import { PassThrough } from "node:stream";
import { expect, test } from "vitest";
import { typedSpaces } from "./typed-spaces.js";

test("what is printed can be searched for as it is typed, and JSON goes through as it is", () => {
  const stream = Object.assign(new PassThrough(), { columns: 72 });
  const printing = typedSpaces(stream as unknown as NodeJS.WriteStream);
  printing.write("Motion at 3600\u00a0rpm\n");
  printing.write('{"title":"85\u00a0km/h"}\n');
  expect(String(stream.read())).toBe('Motion at 3600 rpm\n{"title":"85\u00a0km/h"}\n');
  expect(printing.columns).toBe(72);
});
