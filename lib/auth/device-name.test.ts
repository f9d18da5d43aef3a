import { expect, test } from 'vitest';
import { deviceName } from './device-name';

test.each([
  [
    'Mozilla/5.0 (X11; CrOS x86_64 14541.0.0) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/130.0 Safari/537.36',
    'Chrome on ChromeOS',
  ],
  [
    'Mozilla/5.0 (Windows NT 10.0; Win64; x64; rv:133.0) Gecko/20100101 Firefox/133.0',
    'Firefox on Windows',
  ],
  [
    'Mozilla/5.0 (iPad; CPU OS 18_0 like Mac OS X) AppleWebKit/605.1.15 Version/18.0 Mobile/15E148 Safari/604.1',
    'Safari on iOS',
  ],
  [
    'Mozilla/5.0 (Windows NT 10.0) AppleWebKit/537.36 Chrome/130.0 Safari/537.36 Edg/130.0',
    'Edge on Windows',
  ],
  ['something else', 'A browser'],
  [null, 'A browser'],
])('%j is shown as %s', (userAgent, name) => {
  expect(deviceName(userAgent)).toBe(name);
});
