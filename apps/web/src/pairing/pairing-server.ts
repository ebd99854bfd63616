import type { LanState, PairedDevice, PairingOffer } from "@halfturn/exchange";

export type ClaimAnswer = "in" | "wrong" | "too-often" | "unreachable";

const ask = async <Body>(path: string, init?: RequestInit): Promise<Body | null> => {
  try {
    const answer = await fetch(path, init);
    return answer.ok && answer.headers.get("content-type")?.includes("json") ? ((await answer.json()) as Body) : null;
  } catch {
    return null;
  }
};

/** The addresses at which other devices reach this shop; none where this is not the shop's own screen, or no network is let in. */
export const lanAddresses = async (): Promise<readonly string[]> => (await ask<LanState>("/api/pairing"))?.addresses ?? [];

export const offerPairing = (): Promise<PairingOffer | null> => ask<PairingOffer>("/api/pairing", { method: "POST" });

export const pairedDevices = async (): Promise<readonly PairedDevice[]> =>
  (await ask<{ readonly devices: readonly PairedDevice[] }>("/api/devices"))?.devices ?? [];

export async function shutOut(id: string): Promise<void> {
  await ask(`/api/devices/${encodeURIComponent(id)}`, { method: "DELETE" });
}

/** Shows the code; from then on the browser carries the key that it was given. */
export async function claimPairing(code: string, device: string): Promise<ClaimAnswer> {
  try {
    const answer = await fetch("/api/pairing/claim", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ code, device }),
    });
    if (answer.ok) return "in";
    return answer.status === 429 ? "too-often" : "wrong";
  } catch {
    return "unreachable";
  }
}
