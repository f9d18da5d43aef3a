// Free of imports and of newer syntax: this file must still run where nothing else does.

/**
 * Whether the packages in the lockfile run on this version of Node.
 * The bounds are those of the test tools (jsdom 29, Vite 8), the narrowest of all.
 *
 * @param {string} version such as "20.19.2"
 */
export function isSupportedNode(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return (major === 20 && minor >= 19) || (major === 22 && minor >= 13) || major >= 24;
}

/** Ends the process with one line when this Node cannot run the product. */
export function refuseUnsupportedNode() {
  if (isSupportedNode(process.versions.node)) return;
  console.error(
    `Duskbench needs Node.js 20.19 or later in line 20, 22.13 or later in line 22, or 24 and up; this is ${process.versions.node}. Install a current Node.js and run the command again.`,
  );
  process.exit(1);
}
