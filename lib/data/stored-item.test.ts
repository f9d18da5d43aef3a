import { expect, test } from 'vitest';
import { choice } from '../items/build-item';
import { storedItemSchema } from './stored-item';

const asked = {
  family: 'any',
  template: 'one',
  generatorVersion: 1001,
  ...choice({
    prompt: 'Which way?',
    explanation: 'From north through east.',
    right: { text: 'East', reason: 'So it is.' },
    wrong: [
      { text: 'West', reason: 'No.', misconception: 'azimuth-anticlockwise' },
      { text: 'South', reason: 'No.' },
    ],
  }),
};

test('a question is read as it was kept', () => {
  expect(storedItemSchema.parse(JSON.parse(JSON.stringify(asked)))).toEqual(asked);
});

test('a question stays readable when the idea that it named has another name by now', () => {
  const kept: unknown = JSON.parse(
    JSON.stringify(asked).replace('azimuth-anticlockwise', 'an-old-name'),
  );
  const read = storedItemSchema.parse(kept);
  expect(read.kind === 'choice' ? read.options.map((one) => one.misconception) : null).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});
