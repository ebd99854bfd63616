/** An id that is not taken yet, made from a name: lower-case letters, figures and hyphens, as the case file wants it. */
export function freeId(name: string, taken: readonly string[], stem: string): string {
  const plain = name
    .normalize("NFD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .replace(/^[^a-z]+/, "")
    .replace(/-+$/, "")
    .slice(0, LONGEST);
  const first = plain === "" ? stem : plain;
  if (!taken.includes(first)) return first;
  let number = 2;
  while (taken.includes(`${first}-${number}`)) number += 1;
  return `${first}-${number}`;
}

const LONGEST = 40;
