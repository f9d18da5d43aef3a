import { refuseUnsupportedNode } from './node-version.mjs';

refuseUnsupportedNode();
const { testProduct } = await import('./test-product.mjs');
process.exitCode = await testProduct();
