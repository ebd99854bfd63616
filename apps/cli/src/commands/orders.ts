import { complaintReach, type Problem, turningAt } from "@halfturn/casefile";
import { noteText, problemText } from "@halfturn/words";
import { fileName, readCase } from "../files/read-case.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE, UNANSWERED } from "../program/exit-code.js";
import { jsonText } from "../program/json-text.js";
import { ordersLines } from "../render/orders.js";
import { pageWidth } from "../render/wrap.js";
import type { OrdersFlags } from "./orders-flags.js";

/** Says what turns how fast at a road speed, for people or as the JSON contract. */
export async function runOrders(this: CliContext, flags: OrdersFlags, path: string): Promise<void> {
  const { words, paint } = this;
  const read = await readCase(path, this);
  if (!read.ok) return fail(this, BAD_USE, read.lines);
  const turning = turningAt(read.case, flags);
  if (!turning.ok) {
    const lines = turning.problems.map((problem) => problemLine(problem, fileName(path, words), this));
    // What is merely missing is no bad input; there is only nothing to answer with.
    return fail(this, turning.problems.every(({ code }) => code === "missing") ? UNANSWERED : BAD_USE, lines);
  }
  if (flags.json) {
    for (const note of turning.basis.notes) this.process.stderr.write(`${noteText(words.orders, note, words.numbers)}\n`);
    this.process.stdout.write(jsonText(turning.json));
    return;
  }
  const view = { words, paint, width: pageWidth(this.process.stdout.columns) };
  const reach = complaintReach(read.case, turning.basis.gear);
  this.process.stdout.write(`${ordersLines(turning, reach, read.case, view).join("\n")}\n`);
}

/** A gear that is not there was typed as a flag; everything else stands in the file. */
const problemLine = (problem: Problem, file: string, { words }: CliContext): string =>
  problem.code === "unknown-reference" ? problemText(words, { ...problem, path: "--gear" }) : `${file}: ${problemText(words, problem)}`;
