import { refuseUnsupportedNode } from './node-version.mjs';

refuseUnsupportedNode();
const { startDevelopment } = await import('./start-development.mjs');
process.exitCode = await startDevelopment();
