import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { PageHeader } from './page-header';

afterEach(cleanup);

test('a sign stands between the steps of the way up, and none after the last', () => {
  const crumbs = ['Desk', 'Class'].map((label) => ({ label, href: `/${label}` }));
  render(<PageHeader title="Roster" crumbs={crumbs} />);
  expect(screen.getByRole('navigation', { name: 'You are in' }).textContent).toBe('Desk›Class');
});
