// Which part may know which. Arrows go one way:
//   engine <- casefile <- words <- figures <- report <- apps
//   beside them: recordings knows engine only; exchange knows casefile; store knows casefile and exchange.

const SUBJECT_LIBRARIES = ["ml-matrix", "pure-rand", "d3-random", "quickselect", "fft.js"];
const TEST_LIBRARIES = ["vitest", "fast-check"];
const TESTS = "(\\.test|\\.test-support)\\.ts$";

/** A package and everything above it that it must not know. */
const layer = (name, above) => ({
  name: `${name}-knows-only-what-lies-below`,
  comment: `packages/${name} may not import ${above.join(", ")} or any app.`,
  severity: "error",
  from: { path: `^packages/${name}/` },
  to: { path: `^(packages/(${above.join("|")})|apps|verification|bench|scripts)/` },
});

const modules = (names) => `(^|/)node_modules/(@types/)?(${names.join("|")})/`;

export default {
  forbidden: [
    {
      name: "no-cycles",
      comment: "Two files that need each other are one file, or hide a third; this holds for types as well.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "imports-resolve",
      comment: "An import that does not resolve here breaks on a clean clone.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: "dependencies-are-declared",
      comment: "Declare the package in the package.json of the workspace that imports it.",
      severity: "error",
      from: {},
      to: { dependencyTypes: ["npm-no-pkg", "npm-unknown"] },
    },
    {
      name: "engine-has-no-node-or-dom",
      comment: "The engine runs in a browser, a worker and a server alike: no Node built-in, not even in its tests.",
      severity: "error",
      from: { path: "^packages/engine/" },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "recordings-run-in-a-browser",
      comment: "Readers and writers of recordings take bytes from whoever has them; files are opened by the apps.",
      severity: "error",
      from: { path: "^packages/recordings/", pathNot: TESTS },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "engine-libraries",
      comment: `The engine imports nothing but its numerical libraries: ${SUBJECT_LIBRARIES.join(", ")}. A new one needs a decision in docs/decisions/.`,
      severity: "error",
      from: { path: "^packages/engine/", pathNot: TESTS },
      to: { path: "(^|/)node_modules/", pathNot: modules(SUBJECT_LIBRARIES) },
    },
    {
      name: "engine-test-libraries",
      comment: "Engine tests need the runner and the property checker; outside oracles belong in verification/.",
      severity: "error",
      from: { path: `^packages/engine/.*${TESTS}` },
      to: { path: "(^|/)node_modules/", pathNot: modules([...SUBJECT_LIBRARIES, ...TEST_LIBRARIES]) },
    },
    layer("engine", ["casefile", "words", "figures", "report", "recordings", "exchange", "store"]),
    layer("casefile", ["words", "figures", "report", "recordings", "exchange", "store"]),
    layer("words", ["figures", "report", "recordings", "exchange", "store"]),
    layer("figures", ["report", "recordings", "exchange", "store"]),
    layer("report", ["recordings", "exchange", "store"]),
    layer("recordings", ["casefile", "words", "figures", "report", "exchange", "store"]),
    layer("exchange", ["words", "figures", "report", "recordings", "store"]),
    layer("store", ["words", "figures", "report", "recordings"]),
    {
      name: "apps-are-islands",
      comment: "What two apps share belongs in a package. The command line starts the server through its index, and nothing else crosses.",
      severity: "error",
      from: { path: "^apps/([^/]+)/" },
      to: { path: "^apps/", pathNot: ["^apps/$1/", "^apps/server/src/index\\.ts$"] },
    },
    {
      name: "only-the-command-line-hosts-the-server",
      comment: "The web app meets the server over HTTP; what they say to each other is packages/exchange.",
      severity: "error",
      from: { path: "^apps/web/" },
      to: { path: "^apps/server/" },
    },
    {
      name: "nothing-imports-the-checks",
      comment: "verification, bench and scripts are leaves.",
      severity: "error",
      from: { path: "^(packages|apps)/" },
      to: { path: "^(verification|bench|scripts)/" },
    },
    {
      name: "subjects-through-their-index",
      comment: "Other packages import an engine subject as @halfturn/engine/SUBJECT, which is its index.ts.",
      severity: "error",
      from: { pathNot: "^packages/engine/" },
      to: { path: "^packages/engine/src/", pathNot: ["^packages/engine/src/index\\.ts$", "^packages/engine/src/[^/]+/index\\.ts$"] },
    },
    {
      name: "packages-through-their-exports",
      comment: "A package's inside is its own; import @halfturn/NAME, or export what is missing.",
      severity: "error",
      from: { path: "^(packages|apps)/([^/]+)/" },
      to: { path: "^packages/[^/]+/src/[^/]+/", pathNot: ["^packages/$2/", "^packages/engine/", "/index\\.ts$"] },
    },
    {
      name: "no-tests-in-the-product",
      comment: "Product code may not import a test, a test's helper or a development dependency.",
      severity: "error",
      from: { path: "^(packages|apps)/[^/]+/src/", pathNot: TESTS },
      to: { path: TESTS },
    },
    {
      name: "no-development-dependencies-in-the-product",
      comment: "A package that the product needs at run time is a dependency, not a development dependency.",
      severity: "error",
      from: { path: "^(packages|apps)/[^/]+/src/", pathNot: TESTS },
      to: { dependencyTypes: ["npm-dev"], dependencyTypesNot: ["type-only"] },
    },
  ],
  options: {
    doNotFollow: { path: "(^|/)node_modules/" },
    exclude: { path: "(^|/)dist(-types)?/" },
    tsPreCompilationDeps: true,
    combinedDependencies: true,
    tsConfig: { fileName: "tsconfig.base.json" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["halfturn-source", "import", "node", "types", "default"] },
  },
};
