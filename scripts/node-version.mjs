// Runs before anything is installed, on whatever Node there is: plain, old syntax only.

/**
 * Stops with a readable message on a Node that is too old, instead of a syntax error three files later.
 * @param {number} major
 * @param {number} minor
 * @param {string} what
 */
export function requireNode(major, minor, what) {
  const [haveMajor = 0, haveMinor = 0] = process.versions.node.split(".").map(Number);
  if (haveMajor > major || (haveMajor === major && haveMinor >= minor)) return;
  const wanted = minor === 0 ? `${major}` : `${major}.${minor}`;
  console.error(
    `${what} needs Node.js ${wanted} or newer; this is ${process.versions.node}. Install a newer Node.js and run the command again.`,
  );
  process.exit(1);
}
