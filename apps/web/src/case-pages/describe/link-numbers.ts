import type { CaseAxle } from "@halfturn/casefile";

type Links = Extract<NonNullable<CaseAxle["suspension"]>, { readonly kind: "links" }>;

export const LINK_ENDS = ["frameForwardMm", "frameUpMm", "axleForwardMm", "axleUpMm"] as const;
type LinkEnd = (typeof LINK_ENDS)[number];
/** One of the eight numbers of two links in the side view. */
export type LinkKey = `${"lower" | "upper"}.${LinkEnd}`;
type LinkNumbers = { readonly [Key in LinkKey]: number };

/** The eight numbers side by side, as they are typed. */
export const linkNumbers = (links: Links): LinkNumbers =>
  Object.fromEntries(
    (["lower", "upper"] as const).flatMap((link) => LINK_ENDS.map((end) => [`${link}.${end}`, links[link][end]])),
  ) as LinkNumbers;

/** The links as the case has them; keys that nobody asked about stay. */
export function linksOf(numbers: LinkNumbers, before: Links | undefined): Links {
  const link = (which: "lower" | "upper"): Links["lower"] => ({
    ...before?.[which],
    frameForwardMm: numbers[`${which}.frameForwardMm`],
    frameUpMm: numbers[`${which}.frameUpMm`],
    axleForwardMm: numbers[`${which}.axleForwardMm`],
    axleUpMm: numbers[`${which}.axleUpMm`],
  });
  return { ...before, kind: "links", lower: link("lower"), upper: link("upper") };
}
