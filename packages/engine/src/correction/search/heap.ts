/** A binary heap: the least by `before` first. */
export class Heap<Item> {
  readonly #items: Item[] = [];
  readonly #before: (a: Item, b: Item) => boolean;

  constructor(before: (a: Item, b: Item) => boolean) {
    this.#before = before;
  }

  get size(): number {
    return this.#items.length;
  }

  push(item: Item): void {
    const items = this.#items;
    let at = items.length;
    items.push(item);
    while (at > 0) {
      const parent = (at - 1) >> 1;
      const above = items[parent] as Item;
      if (!this.#before(item, above)) break;
      items[at] = above;
      at = parent;
    }
    items[at] = item;
  }

  pop(): Item | undefined {
    const items = this.#items;
    const top = items[0];
    const last = items.pop();
    if (last === undefined || items.length === 0) return top;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= items.length) break;
      if (child + 1 < items.length && this.#before(items[child + 1] as Item, items[child] as Item)) child++;
      if (!this.#before(items[child] as Item, last)) break;
      items[at] = items[child] as Item;
      at = child;
    }
    items[at] = last;
    return top;
  }
}
