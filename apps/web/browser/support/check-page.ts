import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

interface Violation {
  readonly id: string;
  readonly help: string;
  readonly nodes: readonly { readonly target: readonly unknown[]; readonly failureSummary?: string }[];
}

/** Every breach of the accessibility rules on the page as it stands: `color-contrast: main > p`. */
export async function accessibilityFaults(page: Page): Promise<readonly string[]> {
  // Handed over by the debugger, since the page's security policy lets no such script in.
  await page.evaluate(axeSource);
  const violations = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      readonly axe: { readonly run: (options: object) => Promise<{ readonly violations: Violation[] }> };
    };
    return (await axe.run({ resultTypes: ["violations"] })).violations;
  });
  return violations.flatMap(({ id, help, nodes }) => nodes.map(({ target }) => `${id} (${help}): ${target.join(" ")}`));
}

/** Makes every word on the page longer by two fifths and strange, as a translation might be; to see what has room for it. */
export const pseudoTranslate = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const ACCENTED: Readonly<Record<string, string>> = { a: "ä", e: "é", i: "ï", o: "ö", u: "ü", A: "Å", E: "É", O: "Ø", n: "ñ", c: "ç" };
    const strange = (word: string): string =>
      [...word].map((letter) => ACCENTED[letter] ?? letter).join("") + "ø".repeat(Math.ceil(word.length * 0.4));
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (!node.parentElement?.closest("svg")) node.textContent = (node.textContent ?? "").replace(/\p{L}+/gu, strange);
    }
  });

/** Texts that are cut off or stand out of the page to the side, and pages that scroll that way. */
export const clippedTexts = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const SLACK = 1;
    const hides = (overflow: string): boolean => overflow === "hidden" || overflow === "clip";
    const textOf = (element: Element): string =>
      [...element.childNodes].flatMap((node) => (node.nodeType === Node.TEXT_NODE ? [node.textContent?.trim()] : [])).join("");
    const isRead = (element: Element): boolean =>
      textOf(element) !== "" && !element.closest("svg") && (element as HTMLElement).checkVisibility();
    const scrollsSideways = (element: Element | null): boolean =>
      element !== null && (/auto|scroll/.test(getComputedStyle(element).overflowX) || scrollsSideways(element.parentElement));
    const isCut = (element: Element): boolean => {
      const { overflowX, overflowY, webkitLineClamp } = getComputedStyle(element);
      // What is shortened to so many lines says so with dots; what is for screen readers alone is a pixel large.
      if (!["", "none"].includes(webkitLineClamp) || element.clientWidth <= SLACK) return false;
      const wide = hides(overflowX) && element.scrollWidth > element.clientWidth + SLACK;
      return wide || (hides(overflowY) && element.scrollHeight > element.clientHeight + SLACK);
    };
    const isOff = (element: Element): boolean => {
      const { left, right } = element.getBoundingClientRect();
      return (left < -SLACK || right > innerWidth + SLACK) && !scrollsSideways(element.parentElement);
    };
    // A page scrolls up and down; to the side only what is meant to: a table, the strip of steps.
    const sideways = [...document.querySelectorAll("main")].flatMap(({ scrollWidth, clientWidth }) =>
      scrollWidth > clientWidth + SLACK ? [`the page scrolls sideways by ${scrollWidth - clientWidth} px`] : [],
    );
    const cut = [...document.body.querySelectorAll("*")].filter((element) => isRead(element) && (isCut(element) || isOff(element)));
    return [...sideways, ...cut.map((element) => textOf(element).slice(0, 60))];
  });
