import { BaseSequencer } from "vitest/node";

/** The order of test files: the long ones of the project "verification" before the short ones, so that no processor is left alone with a long one at the end. */
export class SlowFirst extends BaseSequencer {
  /** @override @param {import("vitest/node").TestSpecification[]} files */
  async sort(files) {
    const rank = (/** @type {import("vitest/node").TestSpecification} */ { project }) => (project.name === "verification" ? 0 : 1);
    const sorted = await super.sort(files);
    return sorted.sort((a, b) => rank(a) - rank(b));
  }
}
