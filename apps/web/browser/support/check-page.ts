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

/** Makes every text on the page longer by two fifths and strange, as a translation might be; to see what has room for it. */
export const pseudoTranslate = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const ACCENTED: Readonly<Record<string, string>> = { a: "ä", e: "é", i: "ï", o: "ö", u: "ü", A: "Å", E: "É", O: "Ø", n: "ñ", c: "ç" };
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const text = node.textContent ?? "";
      if (text.trim().length < 2 || node.parentElement?.closest("svg, script, style")) continue;
      const strange = [...text].map((letter) => ACCENTED[letter] ?? letter).join("");
      node.textContent = `${strange} ${"~ø".repeat(Math.ceil((text.trim().length * 0.4) / 2))}`;
    }
  });

/** Texts that are cut off, or stand out of the page to the side. */
export const clippedTexts = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const SLACK = 1;
    const scrolls = (element: Element | null): boolean =>
      element !== null &&
      (/auto|scroll/.test(getComputedStyle(element).overflowX) && element !== document.documentElement
        ? true
        : scrolls(element.parentElement));
    const cut: string[] = [];
    for (const element of document.body.querySelectorAll("*")) {
      const text = [...element.childNodes]
        .filter(({ nodeType }) => nodeType === Node.TEXT_NODE)
        .map(({ textContent }) => textContent?.trim())
        .join("");
      if (text === "" || element.closest("svg") || !(element as HTMLElement).checkVisibility()) continue;
      const style = getComputedStyle(element);
      // Said to those who do not see the mark beside it.
      if (style.clipPath !== "none") continue;
      const { left, right } = element.getBoundingClientRect();
      const shortened = style.webkitLineClamp !== "none" && style.webkitLineClamp !== "";
      const hides = (overflow: string) => overflow === "hidden" || overflow === "clip";
      const inside =
        (!hides(style.overflowX) || element.scrollWidth <= element.clientWidth + SLACK) &&
        (!hides(style.overflowY) || element.scrollHeight <= element.clientHeight + SLACK);
      const onPage = (left >= -SLACK && right <= innerWidth + SLACK) || scrolls(element.parentElement);
      if ((!inside && !shortened) || !onPage) cut.push(text.slice(0, 60));
    }
    return cut;
  });
