/** What the command line says about the shop's server and its data. */
export interface Serving {
  readonly brief: string;
  readonly description: string;
  readonly flags: {
    readonly port: string;
    readonly data: string;
    readonly database: string;
    readonly demo: string;
    readonly web: string;
    readonly lan: string;
  };
  readonly open: (address: string) => string;
  readonly dataIn: (place: string) => string;
  readonly inNetwork: (addresses: string) => string;
  readonly noNetwork: string;
  readonly letIn: string;
  readonly stopWith: string;
  readonly demoMade: (count: string) => string;
  readonly noWeb: (folder: string) => string;
  readonly openFolder: (folder: string) => string;
  readonly finishing: (requests: string, seconds: string) => string;
  readonly stopped: string;
  readonly backup: {
    readonly brief: string;
    readonly description: string;
    readonly output: string;
    readonly written: (file: string) => string;
  };
  readonly restore: {
    readonly brief: string;
    readonly description: string;
    readonly file: string;
    readonly restored: (cases: string, place: string) => string;
    readonly notEmpty: (place: string) => string;
  };
  readonly portTaken: (port: string) => string;
  readonly portRefused: (port: string) => string;
  readonly cannotListen: (port: string, code: string) => string;
  /** Why the store could not be opened or read, by the code of its fault, and what to do. */
  readonly faults: {
    readonly "database-unreachable": (place: string) => string;
    readonly "database-refused": (place: string) => string;
    readonly "disk-full": (place: string) => string;
    readonly "read-only": (place: string) => string;
    readonly "database-busy": (place: string) => string;
    readonly "store-held": (place: string) => string;
    readonly "database-damaged": (place: string) => string;
    readonly "not-a-database": (place: string) => string;
    readonly "database-newer": (place: string) => string;
    readonly "folder-missing": (place: string) => string;
    readonly "not-a-folder": (place: string) => string;
    readonly "not-a-file": (place: string) => string;
    readonly "file-missing": (place: string) => string;
    readonly "file-exists": (place: string) => string;
    readonly "no-permission": (place: string) => string;
    readonly "database-failed": (place: string) => string;
  };
}
