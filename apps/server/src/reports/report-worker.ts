// A process that makes reports for the server until the server lets it go.
import { errorText } from "../app/log.js";
import { type ReportJob, renderReport } from "./render-report.js";
import type { WorkerAnswer } from "./report-renderer.js";

function answer(job: ReportJob): WorkerAnswer {
  try {
    return renderReport(job);
  } catch (error) {
    return { ok: false, why: "failed", error: errorText(error) };
  }
}

process.on("message", (job: ReportJob) => process.send?.(answer(job)));
// The server is gone, however it went.
process.on("disconnect", () => process.exit());
// Ctrl-C goes to the whole group; the server decides when this ends.
process.on("SIGINT", () => undefined);
