import { LANGUAGES, type Language, type Terminal, UNIT_SYSTEMS, type Units } from "@halfturn/words";
import type { CliContext } from "../program/context.js";
import { completeFindingCode, parseFindingCode } from "./finding-code.js";
import { wholeNumber } from "./whole-number.js";

/** As many draws as the agreed contract promises. */
export const DEFAULT_DRAWS = 20_000;
export const DEFAULT_SEED = 1;
const MOST_DRAWS = 1_000_000;
const PLAN_DRAWS = 5000;
const MOST_PLAN_DRAWS = 20_000;
const MOST_SEED = 2 ** 32 - 1;
const MOST_GAUGING = 10_000;
const MOST_TURNS = 10_000_000;
/** More changes at once than there are kinds would be no correction but a rebuild. */
const MOST_CHANGES = 7;
/** Further down the ranking nobody looks. */
const MOST_PLANS = 50;

/** `--lang` is read before anything else; here it is checked and documented. */
export const langFlag = ({ flags }: Terminal) =>
  ({ kind: "enum", values: LANGUAGES as readonly Language[], brief: flags.lang, optional: true, placeholder: "LANG" }) as const;

/** `--units` is read before anything else, too. */
export const unitsFlag = ({ flags }: Terminal) =>
  ({ kind: "enum", values: UNIT_SYSTEMS as readonly Units[], brief: flags.units, optional: true }) as const;

export const fileArgument = (brief: string) => ({ parse: String, brief, placeholder: "FILE" }) as const;

export const stageFlag = ({ flags }: Terminal) =>
  ({ kind: "enum", values: ["as-found", "after"], brief: flags.stage, optional: true }) as const;

export const switchFlag = (brief: string) => ({ kind: "boolean", brief, default: false, withNegated: false }) as const;

export const gaugingFlag = ({ flags }: Terminal) =>
  ({ kind: "parsed", parse: parseWhole(0, MOST_GAUGING), brief: flags.gauging, optional: true, placeholder: "N" }) as const;

export const seedFlag = ({ flags }: Terminal) =>
  ({ kind: "parsed", parse: parseWhole(0, MOST_SEED), brief: flags.seed, default: String(DEFAULT_SEED), placeholder: "N" }) as const;

/** Fewer than a hundred draws say nothing about a 95 % interval. */
export const drawsFlag = ({ flags }: Terminal) =>
  ({ kind: "parsed", parse: parseWhole(100, MOST_DRAWS), brief: flags.draws, default: String(DEFAULT_DRAWS), placeholder: "N" }) as const;

/** A plan predicts several corrections, and between two of its predictions it must be stopped within a tenth of a second. */
export const planDrawsFlag = ({ flags }: Terminal) =>
  ({ kind: "parsed", parse: parseWhole(100, MOST_PLAN_DRAWS), brief: flags.draws, default: String(PLAN_DRAWS), placeholder: "N" }) as const;

export const turnsFlag = ({ flags }: Terminal) =>
  ({ kind: "parsed", parse: parseWhole(1, MOST_TURNS), brief: flags.turns, optional: true, placeholder: "N" }) as const;

export const acceptFlag = ({ flags }: Terminal) =>
  ({
    kind: "parsed",
    parse: parseFindingCode,
    proposeCompletions: completeFindingCode,
    brief: flags.accept,
    placeholder: "CODE",
    variadic: true,
    optional: true,
  }) as const;

export const maxChangesFlag = ({ flags }: Terminal) =>
  ({ kind: "parsed", parse: parseWhole(1, MOST_CHANGES), brief: flags.maxChanges, default: "2", placeholder: "N" }) as const;

export const planNumberFlag = (brief: string) =>
  ({ kind: "parsed", parse: parseWhole(1, MOST_PLANS), brief, optional: true, placeholder: "K" }) as const;

const parseWhole = (least: number, most: number) =>
  function (this: CliContext, input: string): number {
    return wholeNumber(input, least, most, this.words);
  };
