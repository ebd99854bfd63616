import { BaseSequencer } from "vitest/node";

/** The longest of the browser tests, each about half a minute; a name that is missing here costs time and nothing else. */
const LONG = /\/browser\/(accessibility|us-units|room-for-words|long-recording|record)\.test\.ts$/;

/** @param {import("vitest/node").TestSpecification} file */
const rank = ({ project, moduleId }) => (project.name === "verification" || LONG.test(moduleId) ? 0 : 1);

/** The order of test files: the long ones first, so that no processor is left alone with one of them at the end. What is to run later as a group still does. */
export class SlowFirst extends BaseSequencer {
  /** @override @param {import("vitest/node").TestSpecification[]} files */
  async sort(files) {
    const sorted = await super.sort(files);
    return sorted.sort((a, b) => rank(a) - rank(b));
  }
}
