/** What keeps a number and its unit on one line. */
const NO_BREAK = "\u00a0";

/** The stream, with a space as a keyboard types it between a number and its unit: lines are broken by then, and what is printed can be searched for as it is typed. */
export function typedSpaces<Stream extends NodeJS.WriteStream>(stream: Stream): Stream {
  const write = (chunk: unknown, ...rest: readonly unknown[]): boolean =>
    Reflect.apply(stream.write, stream, [typeof chunk === "string" ? chunk.replaceAll(NO_BREAK, " ") : chunk, ...rest]) as boolean;
  return new Proxy(stream, {
    get: (target, key) => {
      if (key === "write") return write;
      const value: unknown = Reflect.get(target, key);
      return typeof value === "function" ? value.bind(target) : value;
    },
  });
}

/** JSON says what the file says, whatever is printed beside it: in it such a space stands by its code, which no stream changes. */
export const spacesByCode = (json: string): string => json.replaceAll(NO_BREAK, "\\u00a0");
