import { CASE_VERSION } from "../schema/case-schema.js";

type Document = Readonly<Record<string, unknown>>;

/**
 * Lifts a document by one version; element k takes version k + 1 to k + 2. Empty while there is only version 1.
 * A new version adds one step here, a folder of kept files, and nothing else: every older file then climbs all the steps.
 */
const UPGRADES: readonly ((document: Document) => Document)[] = [];

/** A document of any version known, brought to the newest. */
export const upgrade = (document: Document, version: number): Document =>
  UPGRADES.slice(version - 1, CASE_VERSION - 1).reduce((lifted, step) => step(lifted), document);
