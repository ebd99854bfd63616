/** All of a case's line but what the engine keeps for its search. */
export const CASE_COLUMNS = [
  "cases.id",
  "cases.sequence",
  "cases.revision",
  "cases.last_revision",
  "cases.removed",
  "cases.title",
  "cases.vehicle",
  "cases.gauged",
  "cases.corrected",
  "cases.proved",
  "cases.saved_at",
  "cases.saved_by",
] as const;
