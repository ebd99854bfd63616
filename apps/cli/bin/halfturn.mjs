#!/usr/bin/env node
// `npx halfturn analyse case.json`: the command line as it was built last.
import { existsSync } from "node:fs";

const program = new URL("../dist/halfturn.js", import.meta.url);
if (existsSync(program)) await import(program.href);
else {
  console.error("halfturn: not built yet; run npm run build once, in the folder that holds it");
  process.exitCode = 70;
}
