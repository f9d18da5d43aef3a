/**
 * The process that serves a finished build: `node web-server.mjs HOST PORT`. The pages are Next's
 * own answer; scripts and style sheets are sent as they were packed when the product was built.
 */
import { createServer } from 'node:http';
import path from 'node:path';
import next from 'next';
import { packedAssetSender } from './packed-assets.mjs';
import { distrustForwarding } from './proxy-headers.mjs';
import { root } from './steps.mjs';

const [hostname = '127.0.0.1', portText = '3000'] = process.argv.slice(2);
const port = Number(portText);

const product = next({ dev: false, dir: root, hostname, port });
await product.prepare();
const sendPage = product.getRequestHandler();
const sendPacked = packedAssetSender(
  path.join(root, process.env['DUSKBENCH_BUILD'] ?? '.next', 'static'),
);

const trustProxy = ['1', 'true'].includes(process.env['DUSKBENCH_TRUST_PROXY'] ?? '');

const server = createServer((request, response) => {
  distrustForwarding(request.headers, trustProxy);
  if (!sendPacked(request, response)) void sendPage(request, response);
});
server.listen(port, hostname);

/** Lets what is being answered finish, but waits for no browser that merely stays connected. */
function stop() {
  server.close(() => process.exit(0));
  server.closeIdleConnections();
  setTimeout(() => {
    server.closeAllConnections();
  }, 2000).unref();
}
process.on('SIGINT', stop);
process.on('SIGTERM', stop);
