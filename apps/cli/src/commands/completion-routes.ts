import type { Terminal } from "@halfturn/words";
import { buildInstallCommand, buildUninstallCommand } from "@stricli/auto-complete";
import { buildCommand, buildRouteMap, type Command, type RouteMap } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import { helpText } from "./help-text.js";

const PROGRAM = "halfturn";
/** What bash calls with the words typed so far; `--` keeps flags among them from being read as our own. */
const PROPOSE = `${PROGRAM} completion propose --`;

export const completionRoutes = (terminal: Terminal): RouteMap<CliContext> =>
  buildRouteMap({
    routes: {
      install: described(buildInstallCommand<CliContext>(PROGRAM, { bash: PROPOSE }), terminal.commands.completionInstall),
      uninstall: described(buildUninstallCommand<CliContext>(PROGRAM, { bash: true }), terminal.commands.completionUninstall),
      propose: buildCommand<Record<never, never>, string[], CliContext>({
        loader: async () => (await import("./propose.js")).runPropose,
        parameters: { positional: { kind: "array", parameter: { parse: String, brief: terminal.args.typed, placeholder: "WORD" } } },
        docs: { brief: terminal.commands.completion },
      }),
    },
    docs: {
      brief: terminal.commands.completion,
      fullDescription: helpText(terminal.descriptions.completion),
      hideRoute: { propose: true },
    },
  });

/** The library's command under a description of our own language. */
const described = (command: Command<CliContext>, brief: string): Command<CliContext> =>
  buildCommand<Record<never, never>, [], CliContext>({ loader: command.loader, parameters: {}, docs: { brief } });
