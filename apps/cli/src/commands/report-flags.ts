import type { Language, Units } from "@halfturn/words";
import type { ReportFile } from "./report-file.js";

export interface ReportFlags {
  readonly output: ReportFile;
  readonly paper: "a4" | "letter";
  readonly seed: number;
  readonly draws: number;
  readonly units?: Units;
  readonly lang?: Language;
}
