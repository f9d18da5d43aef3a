/**
 * The address that a sign-in came from, from the X-Forwarded-For header; null where it cannot be
 * known. Anybody can send that header, so what it says is believed only as far as its last writer:
 *
 * - Behind a proxy of one's own (`trustProxy`) the last entry is the one that the proxy added.
 * - Else `lib/commands/web-server.mjs` deletes what the client sent, and Next, finding no header, puts
 *   the address of the connection there: one entry. A list was not written by us and counts for nothing.
 */
export function clientAddress(forwardedFor: string | null, trustProxy: boolean): string | null {
  const entries = (forwardedFor ?? '').split(',').map((entry) => entry.trim());
  if (!trustProxy && entries.length > 1) return null;
  return entries.at(-1) || null;
}
