import { type FieldNames, isFieldName } from "../../words/field-names.js";

/** What the place of a conflict is called: "Title", "Vehicle: Name", "Front section: Length", or the reading's own name. */
export function conflictField(path: string, names: FieldNames, nameOf: (path: string) => string): string {
  const named = nameOf(path);
  if (named !== path) return named;
  const steps = path.split(".").map((step) => step.replace(/\[\d*\]$/, ""));
  const last = steps.at(-1) ?? path;
  const owner = steps.at(-2);
  const field = isFieldName(last, names) ? names[last] : last;
  if (owner === undefined) return field;
  const ownerPath = path.slice(0, path.lastIndexOf("."));
  const part = nameOf(ownerPath);
  if (part !== ownerPath) return `${part}: ${field}`;
  return isFieldName(owner, names) ? `${names[owner]}: ${field}` : field;
}
