import { expect, test } from 'vitest';
import { csvText } from './csv-text';

test.each(['=1+1', '+44', '-2', '−2', '@SUM(A1)', '\t=1', '\r1', '  =1', '＝1', '\u200B=1', '＠x'])(
  '%j cannot act as a formula',
  (text) => {
    expect(csvText(text).startsWith("'")).toBe(true);
  },
);

test.each(['Maple', 'Anne-Marie', '3 stars', "O'Neill", ''])('%j stays as it is', (text) => {
  expect(csvText(text)).toBe(text);
});
