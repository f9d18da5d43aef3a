import { refuseUnsupportedNode } from './node-version.mjs';

refuseUnsupportedNode();
// Loaded only now: an older Node could not even read it.
const { startProduct } = await import('./start-product.mjs');
process.exitCode = await startProduct(process.argv.slice(2));
