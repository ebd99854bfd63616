import type { Language, Units } from "@halfturn/words";

export interface ListenFlags {
  readonly case: string;
  readonly channel?: string;
  readonly speedFrom?: string;
  readonly speedFile?: string;
  readonly gear?: string;
  readonly figure?: string;
  readonly keep: boolean;
  readonly json: boolean;
  readonly units?: Units;
  readonly lang?: Language;
}
