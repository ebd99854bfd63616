import type { Case } from "@halfturn/casefile";
import { itemKeys } from "./item-keys.js";

/** A case whose corrections name the gaugings they stand on, instead of counting them: a count goes wrong when both sides add one. */
export type NamedCase = Readonly<Record<string, unknown>>;

interface Counted {
  readonly basis?: readonly { readonly gauging: unknown }[];
}

export function withGaugingNames(document: Case): NamedCase {
  const names = itemKeys("gauging", document.gauging ?? []);
  // A count beyond the list says nothing: it is kept as it is.
  return mapBasis(document, (gauging) => (typeof gauging === "number" ? (names[gauging] ?? gauging) : gauging));
}

/** The way back. What stood on a gauging that is no more goes with it. */
export function withGaugingCounts(named: NamedCase): Case {
  const names = itemKeys("gauging", Array.isArray(named.gauging) ? named.gauging : []);
  const counted = mapBasis(named, (gauging) => (typeof gauging === "string" ? names.indexOf(gauging) : gauging));
  const { corrections } = counted;
  if (!Array.isArray(corrections)) return counted as unknown as Case;
  const standing = (corrections as readonly Counted[]).flatMap((correction) => {
    const basis = correction.basis?.filter(({ gauging }) => gauging !== -1);
    if (!basis || basis.length === correction.basis?.length) return [correction];
    return basis.length === 0 ? [] : [{ ...correction, basis }];
  });
  return { ...counted, corrections: standing } as unknown as Case;
}

/** The gaugings that corrections stand on, by name. */
export const gaugingsStoodOn = (named: NamedCase): readonly string[] =>
  (Array.isArray(named.corrections) ? (named.corrections as readonly Counted[]) : []).flatMap(({ basis = [] }) =>
    basis.flatMap(({ gauging }) => (typeof gauging === "string" ? [gauging] : [])),
  );

function mapBasis(document: NamedCase, change: (gauging: unknown) => unknown): NamedCase {
  if (!Array.isArray(document.corrections)) return document;
  const corrections = (document.corrections as readonly Counted[]).map((correction) =>
    correction.basis ? { ...correction, basis: correction.basis.map((one) => ({ ...one, gauging: change(one.gauging) })) } : correction,
  );
  return { ...document, corrections };
}
