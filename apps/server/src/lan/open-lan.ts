import { networkInterfaces } from "node:os";
import { join } from "node:path";
import { authorityOf } from "./authority.js";
import type { Lan } from "./lan.js";
import { lanAddresses } from "./lan-addresses.js";
import { pairing } from "./pairing.js";
import { type ServerCertificate, serverCertificate } from "./server-certificate.js";

export interface OpenedLan extends Omit<Lan, "addresses"> {
  /** Addresses without scheme and port. */
  readonly names: readonly string[];
  readonly tls: ServerCertificate;
}

/** Makes ready what the local network needs: this installation's authority below `folder`, and a certificate for the addresses of today. `now`: ISO 8601. */
export async function openLan(folder: string, now: () => string): Promise<OpenedLan> {
  const names = lanAddresses(networkInterfaces());
  const authority = await authorityOf(join(folder, "lan"), new Date(now()));
  return {
    names,
    certificate: authority.certificate,
    pairing: pairing(() => Date.parse(now())),
    tls: await serverCertificate(authority, names, new Date(now())),
  };
}
