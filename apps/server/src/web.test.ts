import { symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gunzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openShop, PAGE, SCRIPT, type Shop } from "./shop.test-support.js";

let shop: Shop;
beforeAll(async () => {
  shop = await openShop();
});
afterAll(() => shop.remove());

const SCRIPT_PATH = "/assets/index-Ab12_-Cd.js";

describe("the app", () => {
  test.each(["/", "/cases", "/case/abc/gauge", "/index.html"])("%s is its page, asked for anew each time", async (path) => {
    const page = await shop.ask(path);
    expect([page.status, await page.text(), page.headers.get("cache-control")]).toEqual([200, PAGE, "no-cache"]);
    expect(page.headers.get("content-type")).toBe("text/html; charset=utf-8");
  });

  test("files with a hash in their name are kept for ever, the service worker never", async () => {
    const script = await shop.ask(SCRIPT_PATH);
    expect([script.headers.get("cache-control"), await script.text()]).toEqual(["public, max-age=31536000, immutable", SCRIPT]);
    expect((await shop.ask("/sw.js")).headers.get("cache-control")).toBe("no-cache");
  });

  test("are compressed for whoever can read that", async () => {
    const zipped = await shop.ask(SCRIPT_PATH, { headers: { "accept-encoding": "br, gzip" } });
    expect([zipped.headers.get("content-encoding"), zipped.headers.get("vary")]).toEqual(["gzip", "Accept-Encoding"]);
    expect(gunzipSync(await zipped.arrayBuffer()).toString()).toBe(SCRIPT);
    expect((await shop.ask(SCRIPT_PATH)).headers.get("content-encoding")).toBeNull();
  });

  test.each(["/assets/gone-Ab12_-Cd.js", "/favicon.ico", "/api/nothing", "/api"])("%s, which is not there, is no page", async (path) => {
    const answer = await shop.ask(path);
    expect([200, 404]).toContain(answer.status);
    if (path !== "/api") expect(answer.headers.get("content-type")).toBe("application/problem+json");
  });

  test.each([
    "/../secret.txt",
    "/assets/../../secret.txt",
    "/assets/..%2f..%2fsecret.txt",
    "/%2e%2e/secret.txt",
    "/..%5csecret.txt",
    "/assets/%2e%2e%2f%2e%2e%2fsecret.txt",
    "//secret.txt",
    "/secret.txt%00.js",
  ])("%s leads nowhere", async (path) => {
    expect(await (await shop.ask(path)).text()).not.toContain("not for the web");
  });

  test("a link in its folder leads nowhere, neither to a file nor to a folder", async () => {
    const linked = await openShop();
    symlinkSync(join(linked.folder, "secret.txt"), join(linked.folder, "web", "secret.txt"));
    symlinkSync(linked.folder, join(linked.folder, "web", "assets", "up"));
    for (const path of ["/secret.txt", "/assets/up/secret.txt"]) expect([path, (await linked.ask(path)).status]).toEqual([path, 404]);
    await linked.remove();
  });

  test("may load nothing from elsewhere, run nothing that stands in the page, and be framed by nobody", async () => {
    const policy = (await shop.ask("/")).headers.get("content-security-policy") ?? "";
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
  });

  test("a new build is served at once", async () => {
    const fresh = await openShop();
    expect(await (await fresh.ask("/")).text()).toBe(PAGE);
    writeFileSync(join(fresh.folder, "web", "index.html"), "<!doctype html><title>New</title>");
    writeFileSync(join(fresh.folder, "web", "assets", "new-12345678.js"), "1");
    expect(await (await fresh.ask("/")).text()).toContain("New");
    expect((await fresh.ask("/assets/new-12345678.js")).status).toBe(200);
    await fresh.remove();
  });

  test.each(["/", "/api/health", "/api/cases", "/api/nothing", SCRIPT_PATH])(
    "%s has the headers that keep a browser careful",
    async (path) => {
      const { headers } = await shop.ask(path);
      expect(headers.get("x-content-type-options")).toBe("nosniff");
      expect(headers.get("referrer-policy")).toBe("no-referrer");
      expect(headers.get("cross-origin-resource-policy")).toBe("same-origin");
      expect(headers.get("content-security-policy")).toMatch(/frame-ancestors 'none'/);
      expect(headers.get("access-control-allow-origin")).toBeNull();
    },
  );
});

describe("who may ask", () => {
  test.each(["evil.example", "localhost.evil.example", "127.0.0.1.evil.example:4680", "192.168.1.5", ""])(
    "a name that another server could point here, %j, is refused",
    async (host) => {
      expect((await shop.app.request("http://localhost/api/cases", { headers: { host } })).status).toBe(421);
    },
  );

  test.each(["localhost:4680", "127.0.0.1", "[::1]:4680", "LOCALHOST"])("this machine's own name %s is answered", async (host) => {
    expect((await shop.app.request("http://localhost/api/cases", { headers: { host } })).status).toBe(200);
  });

  test.each(["http://evil.example", "null", "http://localhost:9999", "file://"])(
    "a page from %s may not use the server",
    async (origin) => {
      const answer = await shop.app.request("http://localhost:4680/api/cases", { headers: { host: "localhost:4680", origin } });
      expect(answer.status).toBe(403);
    },
  );

  test("the app's own page may", async () => {
    const headers = { host: "localhost:4680", origin: "http://localhost:4680", "sec-fetch-site": "same-origin" };
    expect((await shop.app.request("http://localhost:4680/api/cases", { headers })).status).toBe(200);
  });

  test("a picture on another site's page may not ask for one of ours", async () => {
    const headers = { "sec-fetch-site": "cross-site", "sec-fetch-mode": "no-cors" };
    expect((await shop.ask("/api/cases", { headers })).status).toBe(403);
    expect((await shop.ask("/", { headers: { "sec-fetch-site": "cross-site", "sec-fetch-mode": "navigate" } })).status).toBe(200);
  });
});
