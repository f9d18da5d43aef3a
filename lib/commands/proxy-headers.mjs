const forwarded = ['x-forwarded-for', 'x-forwarded-host', 'x-forwarded-port', 'x-forwarded-proto'];

/**
 * Takes away what a client may have written about itself: Next would believe it. The pages then see
 * the address of the connection. Behind a proxy of one's own the headers are the proxy's and stay.
 *
 * @param {import('node:http').IncomingHttpHeaders} headers changed in place
 * @param {boolean} trustProxy
 */
export function distrustForwarding(headers, trustProxy) {
  if (trustProxy) return;
  for (const name of forwarded) Reflect.deleteProperty(headers, name);
}
