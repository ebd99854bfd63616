/** What the shop can lay hands on, in the unit of the adjuster's amount and signed as it. Nought is always possible and need not be listed. */
export type Stock =
  | { readonly kind: "sizes"; readonly sizes: readonly number[] }
  | { readonly kind: "range"; readonly minimum: number; readonly maximum: number; readonly step: number };
