import { describe, expect, test } from "vitest";
import { reportContent } from "../content/report-content.js";
import { EXAMPLE_NAMES, exampleCase, HOSTILE_TEXTS, hostileCase, sampleReport } from "../sample-report.test-support.js";
import { escapeHtml } from "./escape-html.js";
import { renderHtml } from "./render-html.js";

const render = (name: string, language: "en" | "es" = "en"): string => renderHtml(reportContent(sampleReport(exampleCase(name), language)));
const count = (html: string, pattern: RegExp): number => [...html.matchAll(pattern)].length;

describe.each(EXAMPLE_NAMES)("the HTML report of %s", (name) => {
  const html = render(name);

  test("runs no script and asks nothing of anybody", () => {
    expect(html).not.toMatch(/<script|<link|<img|<iframe|<object|\son\w+=|@import|url\(/i);
    const addresses = [...html.matchAll(/https?:\/\/[^"'\s<]+/g)].map(([address]) => address);
    expect(new Set(addresses)).toEqual(new Set(["http://www.w3.org/2000/svg"]));
    expect(html).toContain("default-src 'none'");
  });

  test("heads every table and names every column and row for a screen reader", () => {
    const tables = count(html, /<table>/g);
    expect(tables).toBeGreaterThan(4);
    expect(count(html, /<caption>[^<]+<\/caption>/g)).toBe(tables);
    expect(count(html, /<tr>/g)).toBe(count(html, /<tr><th scope="(col|row)"/g));
    expect(count(html, /<th(?! scope="(col|row)")[ >]/g)).toBe(0);
  });

  test("never skips a level of heading", () => {
    const levels = [...html.matchAll(/<h([1-6])[ >]/g)].map(([, level]) => Number(level));
    expect(levels[0]).toBe(1);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels.filter((level, k) => k > 0 && level > (levels[k - 1] as number) + 1)).toEqual([]);
  });

  test("closes every element that it opens", () => {
    const body = html.replace(/<!doctype html>|<meta[^>]*>/g, "");
    const open: string[] = [];
    for (const [, slash, tag = "", selfClosing] of body.matchAll(/<(\/?)([a-z][a-z0-9]*)(?:\s[^<>]*?)?(\/?)>/gi)) {
      if (selfClosing) continue;
      if (slash) expect(open.pop()).toBe(tag);
      else open.push(tag);
    }
    expect(open).toEqual([]);
  });
});

test("the page says its language", () => {
  expect(render("one-piece", "en")).toContain('<html lang="en">');
  expect(render("one-piece", "es")).toContain('<html lang="es">');
});

test("the same content gives the same bytes", () => {
  expect(render("two-piece")).toBe(render("two-piece"));
});

test.each(HOSTILE_TEXTS)("%j stands in the page as text", (text) => {
  const html = renderHtml(reportContent(sampleReport(hostileCase(text))));
  expect(html).toContain(`<h1 dir="auto">${escapeHtml(text)}</h1>`);
  expect(html).not.toMatch(/<script|<img|<\/title><b>/i);
});

test("characters that turn the line round or cannot be seen are shown as their codes", () => {
  expect(escapeHtml("a\u202Eb\u0000c\u200Bd")).toBe("a[U+202E]b[U+0000]c[U+200B]d");
  expect(escapeHtml("ñ ± ° 漢 مرحبا 🔧\n")).toBe("ñ ± ° 漢 مرحبا 🔧\n");
});
