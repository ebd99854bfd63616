import type { NetworkInterfaceInfo } from "node:os";

/**
 * This machine's addresses in the local network, IPv4: what a phone in the same network can reach. Addresses that are not to be had there, such as those a machine gives itself when
 * nobody gave it one (RFC 3927), are left out.
 */
export const lanAddresses = (interfaces: Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>): readonly string[] =>
  Object.values(interfaces)
    .flatMap((all) => all ?? [])
    .filter(({ family, internal, address }) => family === "IPv4" && !internal && !address.startsWith("169.254."))
    .map(({ address }) => address);
