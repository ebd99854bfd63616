/**
 * The part of vitest's JSON report that counts.
 * @typedef {{ status: string, fullName?: string }} Assertion
 * @typedef {{ name: string, status: string, assertionResults: readonly Assertion[] }} TestFile
 * @typedef {{ testResults: readonly TestFile[] }} VitestReport
 */

/**
 * What a run proved. A file that failed before any of its tests ran counts as one failure; a test that did not run is never a pass.
 * @param {VitestReport} report
 */
export function tally(report) {
  const assertions = report.testResults.flatMap((file) => file.assertionResults);
  const count = (/** @type {(assertion: Assertion) => boolean} */ test) => assertions.filter(test).length;
  const passed = count(({ status }) => status === "passed");
  const failedTests = count(({ status }) => status === "failed");
  const brokenFiles = report.testResults.filter(
    (file) => file.status === "failed" && !file.assertionResults.some(({ status }) => status === "failed"),
  ).length;
  const failed = failedTests + brokenFiles;
  const notRun = assertions.length - passed - failedTests;
  return { passed, failed, notRun, closingLine: `${passed} passed, ${failed} failed`, good: passed > 0 && failed === 0 && notRun === 0 };
}
