import type { CaseHistory, PairedDevice, PairingOffer } from "@halfturn/exchange";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Api } from "../app/add-route.js";
import { createApp } from "../app/create-app.js";
import { openShop, type Shop, sampleCase } from "../shop.test-support.js";
import { pairing } from "./pairing.js";

describe("a code", () => {
  test("lets one device in, once", () => {
    const codes = pairing(() => 0);
    const { code } = codes.begin();
    expect(code).toMatch(/^\d{8}$/);
    expect(codes.claim(code, "a")).toBe("granted");
    expect(codes.claim(code, "a")).toBe("refused");
  });

  test("is void after five minutes, and once there is another", () => {
    let now = 0;
    const codes = pairing(() => now);
    const first = codes.begin().code;
    const second = codes.begin().code;
    expect(codes.claim(first, "a")).toBe("refused");
    now = 5 * 60_000;
    expect(codes.claim(second, "a")).toBe("refused");
  });

  test("does not survive five wrong tries, from wherever they come", () => {
    const codes = pairing(() => 0);
    const { code } = codes.begin();
    for (let k = 0; k < 5; k++) expect(codes.claim("x", `${k}`)).toBe("refused");
    expect(codes.claim(code, "a")).toBe("refused");
  });

  test("after five wrong tries from one address only that address is shut out, for ten minutes", () => {
    let now = 0;
    const codes = pairing(() => now);
    for (let k = 0; k < 5; k++) expect(codes.claim("x", "a")).toBe("refused");
    // However often it goes on trying, that adds nothing to what counts for all.
    for (let k = 0; k < 100; k++) expect(codes.claim("x", "a")).toBe("too-many-tries");
    const { code } = codes.begin();
    expect(codes.claim(code, "a")).toBe("too-many-tries");
    expect(codes.claim(code, "b")).toBe("granted");
    now = 10 * 60_000;
    expect(codes.claim(codes.begin().code, "a")).toBe("granted");
  });

  test("after twenty wrong tries in all nobody is let in for ten minutes", () => {
    let now = 0;
    const codes = pairing(() => now);
    for (let k = 0; k < 20; k++) expect(codes.claim("", `${k % 4}`)).toBe("refused");
    expect(codes.claim(codes.begin().code, "another")).toBe("too-many-tries");
    now = 10 * 60_000;
    expect(codes.claim(codes.begin().code, "another")).toBe("granted");
  });

  test("nothing is no code, even while none is valid", () => {
    expect(pairing(() => 0).claim("", "a")).toBe("refused");
  });
});

describe("the local network", () => {
  let shop: Shop;
  let outside: Api;
  beforeAll(async () => {
    shop = await openShop((parts) => ({
      ...parts,
      lan: { addresses: ["https://192.0.2.7:4681"], certificate: "PEM", pairing: pairing(() => Date.parse(parts.now())) },
    }));
    outside = createApp({ ...shop.parts, side: "lan", names: ["192.0.2.7"] });
    await shop.take(sampleCase("held"));
  });
  afterAll(() => shop.remove());

  const ask = async (path: string, init?: RequestInit): Promise<Response> => outside.request(`https://192.0.2.7:4681${path}`, init);
  const offer = async (): Promise<PairingOffer> => (await (await shop.ask("/api/pairing", { method: "POST" })).json()) as PairingOffer;
  const claim = (code: string, device = "Bay 1 phone"): Promise<Response> =>
    ask("/api/pairing/claim", { method: "POST", body: JSON.stringify({ code, device }) });
  /** As if it came through a socket from there. */
  const claimFrom = async (remoteAddress: string, code: string): Promise<number> => {
    const sent = { method: "POST", body: JSON.stringify({ code, device: "Phone" }), headers: { "x-forwarded-for": "192.0.2.99" } };
    return (await outside.request("https://192.0.2.7:4681/api/pairing/claim", sent, { incoming: { socket: { remoteAddress } } })).status;
  };
  const cookieOf = (answer: Response): string => (answer.headers.get("set-cookie") ?? "").split(";")[0] ?? "";

  test("sees the app, and nothing of the shop", async () => {
    expect((await ask("/")).status).toBe(200);
    expect((await ask("/api/pairing/authority.crt")).status).toBe(200);
    for (const path of [
      "/api/cases",
      "/api/cases/held",
      "/api/events",
      "/api/openapi.json",
      "/api/devices",
      "/api/pairing",
      "/api/nothing",
    ]) {
      expect((await ask(path)).status, path).toBe(401);
    }
    expect((await ask("/api/cases", { headers: { cookie: "__Host-halfturn-device=guess" } })).status).toBe(401);
    expect((await outside.request("http://localhost/")).status).toBe(421);
  });

  test("is let in by the code of this machine's screen, under the name it gave, until it is sent away", async () => {
    const { code, address, qr } = await offer();
    expect(address).toBe(`https://192.0.2.7:4681/pair#${code}`);
    expect(qr).toMatch(/^<svg/);
    const claimed = await claim(code);
    expect(claimed.status).toBe(201);
    expect(claimed.headers.get("set-cookie")).toMatch(/^__Host-halfturn-device=[\w-]{43}; .*HttpOnly; Secure; SameSite=Strict/);
    const { id } = (await claimed.json()) as PairedDevice;
    const cookie = cookieOf(claimed);
    const put = await ask("/api/cases/held", {
      method: "PUT",
      headers: { cookie, "if-match": '"1"', "x-halfturn-device": "Somebody%20else" },
      body: JSON.stringify(sampleCase("held", { notes: "from the bay" })),
    });
    expect(put.status).toBe(200);
    const history = (await (await ask("/api/cases/held/history", { headers: { cookie } })).json()) as CaseHistory;
    expect(history.revisions.at(-1)?.savedBy).toBe("Bay 1 phone");
    for (const path of ["/api/devices", "/api/pairing"]) expect((await ask(path, { headers: { cookie } })).status).toBe(403);
    expect((await shop.ask(`/api/devices/${id}`, { method: "DELETE" })).status).toBe(204);
    expect((await ask("/api/cases", { headers: { cookie } })).status).toBe(401);
  });

  test("the stream of a device ends when it is sent away", async () => {
    const claimed = await claim((await offer()).code, "Lost phone");
    const { id } = (await claimed.json()) as PairedDevice;
    const stream = await ask("/api/events", { headers: { cookie: cookieOf(claimed) } });
    const told = stream.text();
    await shop.ask(`/api/devices/${id}`, { method: "DELETE" });
    await shop.take(sampleCase("after-it-went"));
    expect(await told).not.toContain("after-it-went");
  });

  test("tokens are kept as hashes, and stand in no log", async () => {
    const claimed = await claim((await offer()).code, "Tablet");
    const token = cookieOf(claimed).split("=")[1] ?? "";
    expect(token).toHaveLength(43);
    expect(JSON.stringify([await shop.store.devices.list(), shop.logged])).not.toContain(token);
  });

  test("a wrong code is refused, and so is a body that is none", async () => {
    await offer();
    expect((await claim("00000000x")).status).toBe(403);
    expect((await ask("/api/pairing/claim", { method: "POST", body: "{" })).status).toBe(400);
    expect((await ask("/api/pairing/claim", { method: "POST", body: JSON.stringify({ code: "1", device: " " }) })).status).toBe(400);
    expect((await ask("/api/pairing/claim", { method: "POST", body: "x".repeat(3000) })).status).toBe(413);
  });

  test("a phone that guesses shuts itself out, and no other", async () => {
    for (let k = 0; k < 5; k++) expect(await claimFrom("192.0.2.66", "x")).toBe(403);
    expect(await claimFrom("192.0.2.66", (await offer()).code)).toBe(429);
    expect(await claimFrom("192.0.2.20", (await offer()).code)).toBe(201);
  });
});
