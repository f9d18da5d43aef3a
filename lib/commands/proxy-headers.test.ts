import { expect, it } from 'vitest';
import { distrustForwarding } from './proxy-headers.mjs';

const sent = () => ({
  host: 'dusk.school.example',
  'x-forwarded-for': '192.0.2.7',
  'x-forwarded-host': 'elsewhere.example',
  'x-forwarded-port': '443',
  'x-forwarded-proto': 'https',
});

it('what a client says about where it comes from is not believed', () => {
  const headers = sent();
  distrustForwarding(headers, false);
  expect(headers).toEqual({ host: 'dusk.school.example' });
});

it('a trusted proxy is', () => {
  const headers = sent();
  distrustForwarding(headers, true);
  expect(headers).toEqual(sent());
});
