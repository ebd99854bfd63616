import type { Catalogue } from "@halfturn/words";
import { type Application, buildApplication } from "@stricli/core";
import type { CliContext } from "./context.js";
import { routesOf } from "./routes.js";
import { textOf } from "./text.js";
import { VERSION } from "./version.js";

export const PROGRAM = "halfturn";

/** The command line application in one language. */
export const appOf = (words: Catalogue, colour: boolean): Application<CliContext> =>
  buildApplication(routesOf(words.terminal), {
    name: PROGRAM,
    versionInfo: { currentVersion: VERSION },
    scanner: { caseStyle: "allow-kebab-for-camel", allowArgumentEscapeSequence: true },
    documentation: { disableAnsiColor: !colour, caseStyle: "convert-camel-to-kebab" },
    localization: { text: textOf(words) },
  });
