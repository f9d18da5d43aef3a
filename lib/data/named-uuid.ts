import 'server-only';
import { createHash } from 'node:crypto';

const bytesOf = (uuid: string): Buffer => Buffer.from(uuid.replaceAll('-', ''), 'hex');

/** A UUID that a name in a namespace (itself a UUID) always gives: version 5, RFC 9562, 5.5. */
export function namedUuid(namespace: string, name: string): string {
  const hash = createHash('sha1').update(bytesOf(namespace)).update(name, 'utf8').digest();
  const bytes = hash.subarray(0, 16);
  bytes.writeUInt8((bytes.readUInt8(6) & 0x0f) | 0x50, 6);
  bytes.writeUInt8((bytes.readUInt8(8) & 0x3f) | 0x80, 8);
  const hex = bytes.toString('hex');
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    hex.slice(12, 16),
    hex.slice(16, 20),
    hex.slice(20),
  ].join('-');
}
