import { expect, test } from 'vitest';
import { clientAddress } from './client-address';

test.each<[header: string | null, behindOwnProxy: string | null, without: string | null]>([
  [null, null, null],
  ['', null, null],
  [' , ', null, null],
  ['192.0.2.7', '192.0.2.7', '192.0.2.7'],
  ['::1', '::1', '::1'],
  // What a client made up stands before what the proxy saw; without a proxy nobody vouches for it.
  ['203.0.113.1, 192.0.2.7', '192.0.2.7', null],
  ['203.0.113.1,203.0.113.2, 192.0.2.7 ', '192.0.2.7', null],
])('%j: behind a proxy of our own %j, else %j', (header, behindOwnProxy, without) => {
  expect(clientAddress(header, true)).toBe(behindOwnProxy);
  expect(clientAddress(header, false)).toBe(without);
});
