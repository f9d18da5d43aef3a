import { act, cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import { SiteShell } from './site-shell';

let pathname = '/';
vi.mock('next/navigation', () => ({ usePathname: () => pathname }));

beforeEach(() => {
  pathname = '/';
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  document.documentElement.removeAttribute('data-theme');
  document.cookie = 'theme=; max-age=0; path=/';
});

function show(viewer: Viewer) {
  render(
    <SiteShell
      viewer={viewer}
      theme={null}
      setTheme={() => Promise.resolve()}
      signOut={() => Promise.resolve()}
    >
      <h1>The page</h1>
    </SiteShell>,
  );
  return within(screen.getByRole('navigation', { name: 'Main' }));
}

const linksOf = (nav: ReturnType<typeof show>) =>
  nav.getAllByRole('link').map((link) => `${link.textContent} ${link.getAttribute('href') ?? ''}`);

test('a visitor is offered the labs, the lessons and the way in', () => {
  const nav = show({ kind: 'anonymous' });
  expect(linksOf(nav)).toEqual(['Labs /labs', 'Lessons /lessons', 'Sign in /sign-in']);
  expect(nav.queryByRole('button', { name: 'Sign out' })).toBeNull();
});

test('a student is offered their work and the way out, and no desk', () => {
  const nav = show({ kind: 'student', studentId: 's', classId: 'c', displayName: 'Merlin' });
  expect(linksOf(nav)).toEqual(['My work /my', 'Labs /labs', 'Lessons /lessons']);
  expect(nav.getByRole('button', { name: 'Sign out' })).toBeTruthy();
});

test('a teacher is offered the desk, the account and the way out', () => {
  const nav = show({ kind: 'teacher', teacherId: 't', displayName: 'Ms Wren' });
  expect(linksOf(nav)).toEqual([
    'Desk /desk',
    'Labs /labs',
    'Lessons /lessons',
    'Account /desk/account',
  ]);
  expect(nav.getByRole('button', { name: 'Sign out' })).toBeTruthy();
});

test('a substitute is offered the one class and the way out, and no account', () => {
  const nav = show({ kind: 'cover', coverId: 'l', classId: 'c', displayName: 'Cover teacher' });
  expect(linksOf(nav)).toEqual(['Class /desk/classes/c/live', 'Labs /labs', 'Lessons /lessons']);
  expect(nav.getByRole('button', { name: 'Sign out' })).toBeTruthy();
});

test('one entry is current, also deep inside its part of the site', () => {
  pathname = '/lessons/choosing-alignment-stars';
  const nav = show({ kind: 'anonymous' });
  const current = nav.getAllByRole('link').filter((link) => link.hasAttribute('aria-current'));
  expect(current.map((link) => link.textContent)).toEqual(['Lessons']);
});

test('in the account the desk is not current as well', () => {
  pathname = '/desk/account';
  const nav = show({ kind: 'teacher', teacherId: 't', displayName: 'Ms Wren' });
  const current = nav.getAllByRole('link').filter((link) => link.hasAttribute('aria-current'));
  expect(current.map((link) => link.textContent)).toEqual(['Account']);
});

test('the first thing a keyboard meets leads past the navigation', async () => {
  show({ kind: 'anonymous' });
  await userEvent.tab();
  expect(document.activeElement?.getAttribute('href')).toBe('#main');
  expect(screen.getByRole('main').id).toBe('main');
});

test('a look is chosen at once, kept in the cookie and told as pressed', async () => {
  show({ kind: 'anonymous' });
  const outdoors = screen.getByRole('button', { name: 'Outdoors' });
  expect(outdoors.getAttribute('aria-pressed')).toBe('false');
  await userEvent.click(outdoors);
  expect(document.documentElement.dataset['theme']).toBe('after-dark');
  expect(document.cookie).toContain('theme=after-dark');
  expect(outdoors.getAttribute('aria-pressed')).toBe('true');
});

test('a lost connection is said, and its return takes the line away', () => {
  show({ kind: 'anonymous' });
  const connection = vi.spyOn(navigator, 'onLine', 'get');
  connection.mockReturnValue(false);
  act(() => {
    window.dispatchEvent(new Event('offline'));
  });
  expect(screen.getByText(/^No connection\./)).toBeTruthy();
  connection.mockReturnValue(true);
  act(() => {
    window.dispatchEvent(new Event('online'));
  });
  expect(screen.queryByText(/^No connection\./)).toBeNull();
});
