/** A phone or tablet that was let in from the local network. */
export interface Device {
  readonly id: string;
  readonly name: string;
  /** ISO 8601. */
  readonly pairedAt: string;
  readonly lastSeenAt: string;
}

/** A device with the hash of the token that it proves itself by; the token itself is kept by the device alone. */
export interface NewDevice {
  readonly id: string;
  readonly name: string;
  /** SHA-256, hexadecimal. */
  readonly tokenHash: string;
}

/** The devices that may use the shop from the local network. Every method may throw a StoreFault. */
export interface DeviceStore {
  /** Latest seen first; those that were sent away are not among them. */
  readonly list: () => Promise<readonly Device[]>;
  readonly add: (device: NewDevice, now: string) => Promise<void>;
  /** The device that a token belongs to, noted as seen; null for one that is unknown or was sent away. */
  readonly byToken: (tokenHash: string, now: string) => Promise<Device | null>;
  /** false where there is none. */
  readonly sendAway: (id: string) => Promise<boolean>;
}
