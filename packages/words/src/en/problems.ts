import type { ProblemCatalogue } from "../catalogue.js";
import { boundsText, choices, isSigned, numberMeant, written } from "../problem-words.js";

const EXPECTED = {
  number: "a number",
  "whole-number": "a whole number",
  string: "a text in quotes",
  boolean: "true or false",
  object: "an object in { }",
  array: "a list in [ ]",
} as const;

const KINDS = {
  null: "null",
  boolean: "true or false",
  number: "a number",
  string: "a text",
  array: "a list",
  object: "an object",
} as const;

const OF = {
  driveline: "driveline",
  section: "section",
  joint: "joint",
  gear: "gear",
} as const;

const FORMS = {
  id: "an id: a lower-case letter first, then lower-case letters, digits and hyphens, such as front-section",
  "joint-id": "a joint id: a letter first, then letters, digits and hyphens, such as J1",
  date: "a date: ISO 8601, such as 2026-05-18 or 2026-05-18T09:30:00Z",
  "finding-code": "the code of a finding, such as gauging.not-at-ride-height",
} as const;

const BOUNDS = {
  atLeast: (n: string) => `at least ${n}`,
  above: (n: string) => `more than ${n}`,
  atMost: (n: string) => `at most ${n}`,
  below: (n: string) => `less than ${n}`,
  and: "and",
};
/** How what may stand in a place is put. */
export const CHOICES = {
  write: (allowed: string) => `write ${allowed}`,
  meant: (suggestion: string, allowed: string) => `most likely "${suggestion}" is meant (allowed: ${allowed})`,
};

const RELATIONS = { "at-least": "at least", "at-most": "at most", "less-than": "less than" } as const;

export const problems: ProblemCatalogue = {
  "empty-file": () => 'nothing in it; make a case with "halfturn new", or give the file that holds one',
  "not-json": ({ line, column }) =>
    `not valid JSON from line ${line}, column ${column}; look there for a missing comma, quote or bracket, or a number with a comma instead of a point`,
  "not-a-case": ({ expected, got }) =>
    `not a Halfturn case: "format" has to be "${expected}" but is ${got}; give a file made with "halfturn new"`,
  "wrong-version": ({ got, newest }) =>
    `case version ${got} is not known here; this program reads up to version ${newest}, so update the program or save the case as version ${newest}`,
  "too-large": ({ of, got, limit }, n) =>
    of === "bytes"
      ? `${n.plain(got / 1e6, 1)}\u00a0MB is more than a case may have (${n.plain(limit / 1e6, 1)}\u00a0MB); check that this is the case and not a recording`
      : `lists and objects nested ${got} deep, ${limit} allowed; check the brackets`,
  missing: ({ allowed }, n) => (allowed ? `is missing; write ${n.any(allowed)}` : "is missing; add it"),
  "wrong-type": ({ expected, got, value, example }) => {
    const meant = expected === "number" && got === "string" ? numberMeant(value) : null;
    if (meant !== null) return `is "${value}", which is a text and not a number; write ${meant}: a point, no quotes, no unit`;
    return `has to be ${EXPECTED[expected]} but is ${KINDS[got]} (${value}); write ${example === undefined ? EXPECTED[expected] : `it like ${example}`}`;
  },
  "out-of-range": (params, n) => {
    const got = written(params.got, n);
    const bounds = boundsText(params, n, BOUNDS);
    if (params.of === "number" && isSigned(params))
      return `is ${got} but is never negative; write its size, and say the direction with the word beside it`;
    if (params.of === "number") return `is ${got} but has to be ${bounds}; correct it`;
    return params.of === "list"
      ? `has ${got} entries but has to have ${bounds}; add or remove some`
      : `has ${got} characters but has to have ${bounds}; make it longer or shorter`;
  },
  "not-allowed": ({ got, ...which }, n) => `"${got}" is not known here; ${choices(which, n, CHOICES)}`,
  "wrong-form": ({ expected, got }) => `"${got}" is not ${FORMS[expected]}`,
  "unknown-key-near": ({ key, suggestion }) =>
    `key "${key}" is not known; did you mean "${suggestion}"? Correct it, or start a key of your own with x-`,
  "key-not-here": ({ key }) => `key "${key}" does not belong in this form of entry; remove it`,
  "unknown-shaft": ({ got, ...which }, n) =>
    `there is no shaft "${got}" on this driveline; ${choices(which, n, CHOICES)} ("source" is the transmission or transfer case output, "driven" the pinion)`,
  "unknown-reference": ({ of, got, ...which }, n) =>
    which.allowed.length === 0
      ? `there is no ${OF[of]} "${got}" in this case, nor any other; add it first`
      : `there is no ${OF[of]} "${got}" in this case; ${choices(which, n, CHOICES)}`,
  "duplicate-id": ({ id, first }) => `id "${id}" stands already at ${first}; give this one another id`,
  "reserved-id": ({ id, of }) =>
    of === "accessory"
      ? `"${id}" is the name of a part that every vehicle has; give the accessory another id`
      : `"${id}" is the name of an end of the driveline; give the section another id`,
  "count-mismatch": ({ of, expected, got }) =>
    of === "sections"
      ? `${got} sections, but the joints listed need ${expected} (always one section fewer than joints); add or remove sections or joints`
      : `the turn-round check has ${got === 1 ? "1 reading" : `${got} readings`}, but they come in pairs, first and turned; make it ${expected}`,
  contradiction: ({ key, relation, other, got, limit, builtIn }, n) => {
    const first = `"${key}" is ${written(got, n)}, which has to be ${RELATIONS[relation]} "${other}"`;
    return builtIn
      ? `${first}, and that is ${written(limit, n)} as long as the case does not set it; correct this one or set that one`
      : `${first} (${written(limit, n)}); correct one of them`;
  },
  "face-reading": ({ got, offPlumb, marked }, n) =>
    marked
      ? `is ${written(got, n)}, but a face across the shaft is read as degrees off plumb; write ${offPlumb}`
      : `is ${written(got, n)}: so near to 90 the gauge sat on a face across the shaft; write "face": "square" beside it, as "deg" what that is off plumb (${offPlumb}), and with "topLeans" the way its top leans`,
  "length-unit": ({ got, meant }, n) =>
    `is ${written(got, n)}, too little for a length in millimetres (mm); if it was measured in metres, write ${meant}`,
  "same-shaft": ({ shaft }) =>
    `a zeroed reading compares two shafts, but both are "${shaft}"; name the shaft it was zeroed on and the shaft it was read on`,
  "unreadable-tyre": ({ got, why }) =>
    `${why === "unreadable" ? `"${got}" cannot be read as a tyre size; write it as the sidewall says, such as 265/70R17` : `the diameter of "${got}" does not follow from its size and is not known here; leave it`}, and give "rollingCircumferenceMm": the millimetres that one turn of the loaded wheel rolls`,
};
