/** The item at an index that the program has taken from the case itself; a wrong one is a mistake of the program. */
export function itemAt<Item>(items: readonly Item[] | undefined, index: number, name: string): Item {
  const item = items?.[index];
  if (item === undefined) throw new RangeError(`no ${name}[${index}] in this case`);
  return item;
}
