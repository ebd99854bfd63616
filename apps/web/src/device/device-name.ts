const KEY = "halfturn-device";
const LONGEST = 60;

const KINDS: readonly (readonly [pattern: RegExp, name: string])[] = [
  [/iPad|Tablet|Android(?!.*Mobile)/, "Tablet"],
  [/Mobile|iPhone/, "Phone"],
];

/** "Phone 4F2A": enough to tell the devices of a shop apart until somebody gives it a name. */
const inventedName = (userAgent: string, number: number): string => {
  const kind = KINDS.find(([pattern]) => pattern.test(userAgent))?.[1] ?? "Computer";
  return `${kind} ${number.toString(16).toUpperCase().padStart(4, "0")}`;
};

/** The name under which this device saves. */
export function deviceName(): string {
  const kept = localStorage.getItem(KEY);
  if (kept) return kept;
  const invented = inventedName(navigator.userAgent, crypto.getRandomValues(new Uint16Array(1))[0] ?? 0);
  localStorage.setItem(KEY, invented);
  return invented;
}

export const renameDevice = (name: string): void => localStorage.setItem(KEY, [...name].slice(0, LONGEST).join(""));
