import type { StoreFaultCode } from "@halfturn/store";

/** What each refusal carries for its sentence. */
export interface RefusalParams {
  readonly "not-found": { readonly what: string };
  readonly "app-missing": Readonly<Record<never, never>>;
  readonly "method-not-allowed": { readonly method: string };
  readonly "bad-request": { readonly why: string };
  readonly "case-unknown": { readonly id: string };
  readonly "case-put-away": { readonly id: string; readonly revision: number; readonly setAside?: number };
  readonly "case-not-put-away": { readonly id: string };
  readonly "case-exists": { readonly id: string };
  readonly "case-refused": { readonly problems: number };
  readonly "id-unusable": { readonly id: string };
  readonly "id-differs": { readonly address: string; readonly document: string };
  readonly "revision-unknown": { readonly id: string; readonly revision: number };
  readonly "tag-missing": { readonly example: string };
  readonly "tag-unreadable": { readonly got: string };
  readonly "case-changed": { readonly id: string; readonly revision: number };
  readonly "body-too-large": { readonly limit: number };
  readonly "body-missing": { readonly what: string };
  readonly "wrong-content": { readonly expected: string; readonly got: string };
  readonly "device-name-unreadable": { readonly limit: number };
  readonly "picture-unknown": { readonly name: string };
  readonly "picture-name-unusable": { readonly name: string };
  readonly "picture-name-taken": { readonly name: string };
  readonly "picture-hash-differs": { readonly expected: string; readonly got: string };
  readonly "picture-kind-unknown": { readonly allowed: readonly string[] };
  readonly "picture-damaged": Readonly<Record<never, never>>;
  readonly "picture-too-large": { readonly pixels: number; readonly limit: number };
  readonly "too-many-pictures": { readonly id: string };
  readonly "nothing-to-report": { readonly id: string };
  readonly "report-failed": { readonly id: string };
  readonly "host-refused": { readonly host: string };
  readonly "origin-refused": { readonly origin: string };
  readonly "too-many-listeners": { readonly limit: number };
  readonly "not-paired": Readonly<Record<never, never>>;
  readonly "home-only": Readonly<Record<never, never>>;
  readonly "no-lan": Readonly<Record<never, never>>;
  readonly "code-refused": Readonly<Record<never, never>>;
  readonly "too-many-tries": Readonly<Record<never, never>>;
  readonly "device-unknown": { readonly id: string };
  readonly stopping: Readonly<Record<never, never>>;
  readonly "server-fault": Readonly<Record<never, never>>;
}

export type RefusalCode = keyof RefusalParams;

/** Every sentence that the server says, in one language. */
export interface ServerWords {
  readonly refusals: { readonly [Code in RefusalCode]: (params: RefusalParams[Code]) => string };
  /** To whoever asked: what happened to the request, and what to do. */
  readonly faults: { readonly [Code in StoreFaultCode]: string };
}
