import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changed, redone, startHistory, undone } from './work-history';

test('undo leads back through every change and redo forth again, to the very same work', () => {
  fc.assert(
    fc.property(fc.array(fc.integer(), { minLength: 1, maxLength: 40 }), (drafts) => {
      const after = drafts.reduce(
        (history, draft) => changed(history, draft, null),
        startHistory(-1),
      );
      let history = after;
      for (const draft of [...drafts].reverse()) {
        expect(history.draft).toBe(draft);
        history = undone(history);
      }
      expect(history.draft).toBe(-1);
      expect(undone(history)).toBe(history);
      for (const draft of drafts) {
        history = redone(history);
        expect(history.draft).toBe(draft);
      }
      expect(redone(history)).toBe(history);
    }),
  );
});

test('a drag is one step; the next drag is another', () => {
  let history = startHistory('start');
  for (const place of ['a', 'b', 'c']) history = changed(history, place, 1);
  for (const place of ['d', 'e']) history = changed(history, place, 2);
  history = undone(history);
  expect(history.draft).toBe('c');
  expect(undone(history).draft).toBe('start');
});

test('a change after undo drops what was taken back', () => {
  const history = changed(undone(changed(startHistory(1), 2, null)), 3, null);
  expect(redone(history)).toBe(history);
  expect(undone(history).draft).toBe(1);
});
