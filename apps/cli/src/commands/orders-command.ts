import type { Terminal } from "@halfturn/words";
import { buildCommand, type Command } from "@stricli/core";
import type { CliContext } from "../program/context.js";
import { fileArgument, langFlag, switchFlag, turnsFlag, unitsFlag } from "./common-flags.js";
import { helpText } from "./help-text.js";
import type { OrdersFlags } from "./orders-flags.js";
import { parseRoadSpeed } from "./road-speed.js";

export const ordersCommand = (terminal: Terminal): Command<CliContext> =>
  buildCommand<OrdersFlags, [string], CliContext>({
    loader: async () => (await import("./orders.js")).runOrders,
    parameters: {
      flags: {
        speed: { kind: "parsed", parse: parseRoadSpeed, brief: terminal.flags.speed, placeholder: "KMH" },
        gear: { kind: "parsed", parse: String, brief: terminal.flags.gear, placeholder: "LABEL", optional: true },
        turns: turnsFlag(terminal),
        json: switchFlag(terminal.flags.json),
        units: unitsFlag(terminal),
        lang: langFlag(terminal),
      },
      positional: { kind: "tuple", parameters: [fileArgument(terminal.args.file)] },
    },
    docs: { brief: terminal.commands.orders, fullDescription: helpText(terminal.descriptions.orders) },
  });
