import { z } from "zod";

/** Whether and where the shop can be reached from the local network. */
export const lanState = z
  .object({
    /** Addresses of the shop, https://...; none while the server serves this machine only. */
    addresses: z.array(z.string()),
  })
  .meta({ id: "LanState" });

/** A code that lets one device in, to be shown on this machine's screen. */
export const pairingOffer = z
  .object({
    code: z.string().regex(/^\d{8}$/),
    /** ISO 8601, by the server's clock. */
    expiresAt: z.string(),
    /** What the QR code holds: an address of the app's page /pair, with the code after the #. */
    address: z.string(),
    /** The QR code as an SVG picture. */
    qr: z.string(),
  })
  .meta({ id: "PairingOffer" });

/** What a device sends to be let in. */
export const pairingClaim = z.object({ code: z.string().max(20), device: z.string().trim().min(1).max(60) }).meta({ id: "PairingClaim" });

/** A device that was let in. */
export const pairedDevice = z
  .object({ id: z.string(), name: z.string(), pairedAt: z.string(), lastSeenAt: z.string() })
  .meta({ id: "PairedDevice" });

export const pairedDevices = z.object({ devices: z.array(pairedDevice) }).meta({ id: "PairedDevices" });

export type LanState = { readonly addresses: readonly string[] };
export type PairingOffer = Readonly<z.infer<typeof pairingOffer>>;
export type PairingClaim = Readonly<z.infer<typeof pairingClaim>>;
export type PairedDevice = Readonly<z.infer<typeof pairedDevice>>;
