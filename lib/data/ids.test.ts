import fc from 'fast-check';
import { expect, test } from 'vitest';
import { idOrNull, parsedId } from './ids';

test('an id comes out as it came in', () => {
  fc.assert(
    fc.property(fc.uuid(), (id) => {
      expect(parsedId(id)).toBe(id);
      expect(idOrNull(id)).toBe(id);
    }),
  );
});

test('nothing but a text passes for an id: an object would be a filter', () => {
  const notText = fc.anything().filter((value) => typeof value !== 'string');
  fc.assert(
    fc.property(notText, (value) => {
      expect(() => parsedId(value)).toThrow();
      expect(idOrNull(value)).toBeNull();
    }),
  );
  for (const text of ['', 'x'.repeat(101)]) expect(idOrNull(text)).toBeNull();
});
