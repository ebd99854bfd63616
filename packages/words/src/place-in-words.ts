import { LIST_KEYS, type Phrases } from "./phrases.js";

/** "reading 3 of gauging 1" for `gauging[0].readings[2].deg`: entries counted from 1, as people do, whatever the file holds; null where the path goes through no list. */
export function placeInWords({ places }: Phrases, path: string): string | null {
  const entries = [...path.matchAll(/([A-Za-z_$][\w$-]*)\[(\d+)\]/g)].map(([, list = "", index]) => {
    const known = LIST_KEYS.find((key) => key === list);
    const number = Number(index) + 1;
    return known ? places.entries[known](number) : places.entry(list, number);
  });
  return entries.length === 0 ? null : entries.reduceRight((inner, outer) => places.within(inner, outer));
}
