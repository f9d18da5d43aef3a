import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test, vi } from 'vitest';
import { CommentForms } from './comment-forms';

afterEach(cleanup);

const actions = { write: vi.fn(), giveBack: vi.fn(), takeBack: vi.fn() };
function show(returnedAt: string | null, moreTimeAt: string | null) {
  cleanup();
  const written = { comments: [], returnedAt, newerStarted: false };
  const { container } = render(
    <CommentForms written={written} names={[]} actions={actions} moreTimeAt={moreTimeAt} />,
  );
  container.querySelector('details')?.setAttribute('open', '');
}

test('before and after giving back, a teacher reads that the time is over and where to give more', () => {
  for (const returnedAt of [null, '2026-12-01T10:00:00.000Z']) {
    show(returnedAt, '/more-time');
    const link = screen.getByRole('link', { name: 'give more time' });
    expect(link.getAttribute('href')).toBe('/more-time');
    expect(screen.queryByText(/may try once more/)).toBeNull();
    show(returnedAt, null);
    expect(screen.queryByRole('link')).toBeNull();
    expect(screen.getByText(/may try once more/)).toBeTruthy();
  }
});
