/** A number with as many digits as fit into so many characters, with the point that Fortran's input asks for. `width` at least 9. */
export function fittedNumber(value: number, width: number): string {
  const shortest = withPoint(String(value));
  if (shortest.length <= width) return shortest;
  for (let digits = 17; digits > 1; digits--) {
    const plain = withPoint(value.toPrecision(digits));
    const scaled = withPoint(value.toExponential(digits - 1));
    const text = plain.length <= scaled.length ? plain : scaled;
    if (text.length <= width) return text;
  }
  return withPoint(value.toExponential(0));
}

const withPoint = (text: string): string => {
  const [mantissa = "", exponent] = text.toLowerCase().split("e");
  const pointed = mantissa.includes(".") ? mantissa : `${mantissa}.`;
  return exponent === undefined ? pointed : `${pointed}E${exponent}`;
};
