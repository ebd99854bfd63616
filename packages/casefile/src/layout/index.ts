export { withDriveline, withoutDriveline } from "./built.js";
export * from "./named.js";
export * from "./new-case.js";
export { inPieces, PIECES, type Pieces } from "./pieces.js";
