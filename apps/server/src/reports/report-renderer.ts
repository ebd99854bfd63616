import { type ChildProcess, fork } from "node:child_process";
import type { ReportJob, ReportOutcome } from "./render-report.js";

export type WorkerAnswer = ReportOutcome | { readonly ok: false; readonly why: "failed"; readonly error: string };

/** Makes reports without keeping the server from its other work. */
export interface ReportRenderer {
  readonly render: (job: ReportJob) => Promise<WorkerAnswer>;
  readonly close: () => void;
}

export interface RendererSettings {
  /** The worker's file. */
  readonly worker: URL;
  /** A worker is replaced after so many reports: the typesetter keeps memory for each. */
  readonly reportsEach?: number;
  /** A report that takes longer is given up, and its worker ended. */
  readonly timeoutMs?: number;
  /** A worker without work is let go after so long. */
  readonly idleMs?: number;
}

/** One worker at a time, started when there is work; jobs wait for one another. */
export function reportRenderer({ worker, reportsEach = 100, timeoutMs = 60_000, idleMs = 60_000 }: RendererSettings): ReportRenderer {
  let child: ChildProcess | null = null;
  let made = 0;
  let idle: NodeJS.Timeout | undefined;
  let closed = false;
  let last: Promise<unknown> = Promise.resolve();

  const letGo = (): void => {
    clearTimeout(idle);
    child?.kill("SIGKILL");
    child = null;
    made = 0;
  };

  async function run(job: ReportJob): Promise<WorkerAnswer> {
    if (closed) return { ok: false, why: "failed", error: "the server is stopping" };
    clearTimeout(idle);
    child ??= fork(worker, { serialization: "advanced", stdio: ["ignore", "ignore", "inherit", "ipc"], execArgv: [] });
    const answer = await answerOf(child, job, timeoutMs);
    made++;
    if (made >= reportsEach || !child.connected || (!answer.ok && answer.why === "failed")) letGo();
    else idle = setTimeout(letGo, idleMs).unref();
    return answer;
  }

  return {
    render: (job) => {
      const done = last.then(() => run(job));
      last = done.catch(() => undefined);
      return done;
    },
    close: () => {
      closed = true;
      letGo();
    },
  };
}

function answerOf(child: ChildProcess, job: ReportJob, timeoutMs: number): Promise<WorkerAnswer> {
  return new Promise((resolve) => {
    const finish = (answer: WorkerAnswer): void => {
      clearTimeout(late);
      child.off("message", onMessage).off("exit", onExit).off("error", onError);
      resolve(answer);
    };
    const failed = (error: string): void => finish({ ok: false, why: "failed", error });
    const onMessage = (answer: unknown): void => finish(answer as WorkerAnswer);
    const onExit = (code: number | null, signal: string | null): void => failed(`the worker ended (${signal ?? code})`);
    const onError = (error: Error): void => failed(error.message);
    const late = setTimeout(() => failed(`no report within ${timeoutMs} ms`), timeoutMs);
    child.on("message", onMessage).on("exit", onExit).on("error", onError);
    child.send(job, (error) => {
      if (error) failed(error.message);
    });
  });
}
