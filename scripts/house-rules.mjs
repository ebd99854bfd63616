// The rules of the house that no general tool knows. Prints file:line, the rule and the remedy; exits 1 on any breach.
import { readTracked } from "./house-rules/read-tracked.mjs";
import { breachesOf } from "./house-rules/rules.mjs";
import { root } from "./paths.mjs";

const files = readTracked(root);
const breaches = breachesOf(files);
for (const { file, line, rule, remedy } of breaches) console.error(`${file}:${line}  ${rule}: ${remedy}`);
console.log(breaches.length === 0 ? `${files.length} files keep the house rules.` : `${breaches.length} breaches of the house rules.`);
process.exitCode = breaches.length === 0 && files.length > 0 ? 0 : 1;
