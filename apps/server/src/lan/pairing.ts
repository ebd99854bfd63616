import { createHash, randomBytes, randomInt, timingSafeEqual } from "node:crypto";

const DIGITS = 8;
const VALID_MS = 5 * 60_000;
/** Wrong tries that a code survives; of a hundred million codes, that is no chance worth naming. */
const TRIES = 5;
/** Wrong tries from one address, and in all, within so long, after which that address, or nobody, is let in for a while. One device cannot lock out the others. */
const TRIES_EACH = 5;
const TRIES_IN_ALL = 20;
const WITHIN_MS = 10 * 60_000;
const TOKEN_BYTES = 32;

export const tokenHashOf = (token: string): string => createHash("sha256").update(token).digest("hex");

export interface PairingCode {
  readonly code: string;
  /** Milliseconds since the epoch. */
  readonly expiresAt: number;
}

export type Claim = "granted" | "refused" | "too-many-tries";

/** Codes that let one device in, each once and for a short while. At most one is valid at a time. */
export interface Pairing {
  readonly begin: () => PairingCode;
  /** `from`: the address that the code comes from. */
  readonly claim: (code: string, from: string) => Claim;
}

/** `now`: milliseconds since the epoch. */
export function pairing(now: () => number): Pairing {
  let valid: (PairingCode & { tries: number }) | null = null;
  let wrong: readonly { readonly at: number; readonly from: string }[] = [];
  return {
    begin: () => {
      const code = String(randomInt(10 ** DIGITS)).padStart(DIGITS, "0");
      valid = { code, expiresAt: now() + VALID_MS, tries: 0 };
      return { code, expiresAt: valid.expiresAt };
    },
    claim: (code, from) => {
      wrong = wrong.filter(({ at }) => now() - at < WITHIN_MS);
      const own = wrong.filter((one) => one.from === from);
      if (own.length >= TRIES_EACH || wrong.length >= TRIES_IN_ALL) return "too-many-tries";
      if (valid !== null && now() >= valid.expiresAt) valid = null;
      // Compared in any case, so that the time taken does not tell whether a code is valid.
      const right = equal(code, valid?.code ?? "") && valid !== null;
      if (right) {
        valid = null;
        return "granted";
      }
      wrong = [...wrong, { at: now(), from }];
      if (valid !== null && ++valid.tries >= TRIES) valid = null;
      return "refused";
    },
  };
}

/** A token nobody can guess; only its hash is kept here. */
export const newToken = (): string => randomBytes(TOKEN_BYTES).toString("base64url");

/** Compared by their hashes, which are of one length and take one time. */
const equal = (a: string, b: string): boolean =>
  timingSafeEqual(createHash("sha256").update(a).digest(), createHash("sha256").update(b).digest());
