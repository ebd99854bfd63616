import { X509Certificate } from "node:crypto";
import { lstatSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { request } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { OpenAPIHono } from "@hono/zod-openapi";
import { afterAll, expect, test } from "vitest";
import { claimPort } from "../http/claim-port.js";
import { authorityOf } from "./authority.js";
import { lanAddresses } from "./lan-addresses.js";
import { serverCertificate } from "./server-certificate.js";

const folder = mkdtempSync(join(tmpdir(), "halfturn-lan-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("an installation makes its authority once, and keeps the key to itself", async () => {
  const place = join(folder, "lan");
  const first = await authorityOf(place, new Date());
  expect(readdirSync(place).sort()).toEqual(["authority.crt", "authority.key"]);
  expect(statSync(join(place, "authority.key")).mode & 0o777).toBe(0o600);
  expect(statSync(place).mode & 0o077).toBe(0);
  expect((await authorityOf(place, new Date())).certificate).toBe(first.certificate);
  expect((await authorityOf(join(folder, "other"), new Date())).certificate).not.toBe(first.certificate);
  expect(first.certificate).not.toContain("PRIVATE");
  const certificate = new X509Certificate(first.certificate);
  expect([certificate.ca, certificate.checkIssued(certificate)]).toEqual([true, true]);
  expect(readFileSync(join(place, "authority.key"), "utf8")).toContain("PRIVATE KEY");
});

test("a link in its place is not followed, neither to read nor to write", async () => {
  const [place, elsewhere] = [join(folder, "linked"), join(folder, "elsewhere")];
  mkdirSync(place);
  mkdirSync(elsewhere);
  for (const name of ["authority.crt", "authority.key", "authority.crt.new", "authority.key.new"]) {
    writeFileSync(join(elsewhere, name), "kept");
    symlinkSync(join(elsewhere, name), join(place, name));
  }
  await authorityOf(place, new Date());
  for (const name of readdirSync(elsewhere)) expect(readFileSync(join(elsewhere, name), "utf8")).toBe("kept");
  expect(lstatSync(join(place, "authority.key")).mode & 0o177777).toBe(0o100600);
  expect(statSync(place).mode & 0o077).toBe(0);
  symlinkSync(place, join(folder, "linked-folder"));
  await expect(authorityOf(join(folder, "linked-folder"), new Date())).rejects.toMatchObject({ code: "not-a-folder" });
});

test("a device that knows the authority trusts the server at its address, and no other does", async () => {
  const authority = await authorityOf(join(folder, "lan"), new Date());
  const certificate = await serverCertificate(authority, ["127.0.0.1", "192.0.2.7"], new Date());
  const leaf = new X509Certificate(certificate.chain);
  expect([leaf.ca, leaf.checkIP("192.0.2.7"), leaf.checkIP("192.0.2.8")]).toEqual([false, "192.0.2.7", undefined]);
  const app = new OpenAPIHono();
  app.get("/", (c) => c.text("here"));
  const server = await claimPort({ host: "127.0.0.1", port: 0, secure: true });
  server.answerBy(app, certificate);
  const ask = (ca?: string): Promise<string> =>
    new Promise((resolve, reject) => {
      const asking = request({ host: "127.0.0.1", port: server.port, path: "/", ...(ca === undefined ? {} : { ca }) }, (answer) => {
        answer.on("data", (chunk) => resolve(String(chunk)));
      });
      asking.on("error", reject);
      asking.end();
    });
  expect(await ask(authority.certificate)).toBe("here");
  await expect(ask()).rejects.toThrow(/self-signed|unable to/);
  await server.stop();
});

test("only addresses that a phone can reach are told", () => {
  const one = (address: string, family: "IPv4" | "IPv6" = "IPv4", internal = false) =>
    ({ address, family, internal, netmask: "", mac: "", cidr: null, ...(family === "IPv6" ? { scopeid: 0 } : {}) }) as never;
  expect(
    lanAddresses({
      lo: [one("127.0.0.1", "IPv4", true)],
      eth0: [one("192.0.2.7"), one("fe80::1", "IPv6")],
      wlan0: [one("169.254.3.4")],
      gone: undefined,
    }),
  ).toEqual(["192.0.2.7"]);
});
