import { expect, test } from 'vitest';
import { namedUuid } from './named-uuid';

// Source: uuid.uuid5 of Python's standard library, with the namespaces of RFC 9562, 6.6.
test('a name gives the UUID that another library gives it', () => {
  const [hostNames, addresses] = ['0', '1'].map(
    (digit) => `6ba7b81${digit}-9dad-11d1-80b4-00c04fd430c8`,
  );
  expect(namedUuid(hostNames ?? '', 'www.example.com')).toBe(
    '2ed6657d-e927-568b-95e1-2665a8aea6a2',
  );
  expect(namedUuid(addresses ?? '', 'https://example.org/ä')).toBe(
    'a3dbf7e0-ef27-5dc9-ad48-bf7f82055d84',
  );
});
