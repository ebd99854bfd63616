import type { Terminal } from "@halfturn/words";
import { buildRouteMap, type RouteMap } from "@stricli/core";
import { analyseCommand } from "../commands/analyse-command.js";
import { backupCommand, restoreCommand } from "../commands/backup-command.js";
import { completionRoutes } from "../commands/completion-routes.js";
import { convertCommand } from "../commands/convert-command.js";
import { helpText } from "../commands/help-text.js";
import { listenCommand } from "../commands/listen-command.js";
import { newCommand } from "../commands/new-command.js";
import { ordersCommand } from "../commands/orders-command.js";
import { planCommand } from "../commands/plan-command.js";
import { predictCommand } from "../commands/predict-command.js";
import { reportCommand } from "../commands/report-command.js";
import { serveCommand } from "../commands/serve-command.js";
import { validateCommand } from "../commands/validate-command.js";
import type { CliContext } from "./context.js";

/** Every command, in the order of the work. What a command does is loaded only when it runs. */
export const routesOf = (terminal: Terminal): RouteMap<CliContext> =>
  buildRouteMap({
    routes: {
      new: newCommand(terminal),
      validate: validateCommand(terminal),
      analyse: analyseCommand(terminal),
      predict: predictCommand(terminal),
      plan: planCommand(terminal),
      orders: ordersCommand(terminal),
      listen: listenCommand(terminal),
      convert: convertCommand(terminal),
      report: reportCommand(terminal),
      serve: serveCommand(terminal),
      backup: backupCommand(terminal),
      restore: restoreCommand(terminal),
      completion: completionRoutes(terminal),
    },
    docs: { brief: terminal.brief, fullDescription: helpText(terminal.description) },
  });
