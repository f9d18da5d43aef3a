import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test } from 'vitest';
import type { SignOffSheet } from '@/lib/mastery/sign-off-sheet';
import { SignOffBoard } from './sign-off-board';

const sheet: SignOffSheet = {
  classId: 'class',
  className: '9b',
  timeZone: 'Europe/London',
  needed: 3,
  teacherId: 'teacher',
  telescopes: [],
  groups: [],
  notes: [],
  agreement: null,
  students: [{ id: 'ann', displayName: 'Comfrey', cardNumber: 1, groupId: null, indoors: [] }],
};

afterEach(() => {
  cleanup();
  window.localStorage.clear();
});

test('the Sun’s caution is read before the grid', () => {
  render(
    <SignOffBoard sheet={sheet} teacherId="teacher" group="" today="2026-12-05T13:00:00.000Z" />,
  );
  const caution = screen.getByText(/stay capped until sunset/);
  const grid = screen.getByRole('button', { name: /^Comfrey, Clock and place/ });
  expect(caution.compareDocumentPosition(grid)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
});

test('a note of another version that lies on the device is told of', async () => {
  window.localStorage.setItem('duskbench-sign-off-queue:class:teacher', '[{"of":"tomorrow"}]');
  render(
    <SignOffBoard sheet={sheet} teacherId="teacher" group="" today="2026-12-05T13:00:00.000Z" />,
  );
  expect(await screen.findByText('1 note cannot be read')).toBeTruthy();
});

const three: SignOffSheet = {
  ...sheet,
  groups: [{ id: 'one', name: 'Group 1', telescope: null }],
  students: (['ann', 'ben', 'cai'] as const).map((id, index) => ({
    id,
    displayName: id,
    cardNumber: index + 1,
    indoors: [],
    groupId: id === 'cai' ? null : 'one',
  })),
};

const openSeveral = async (group: string) => {
  render(
    <SignOffBoard
      {...{ sheet: three, teacherId: 'teacher', group, today: '2026-12-05T13:00:00.000Z' }}
    />,
  );
  await userEvent.click(screen.getByRole('button', { name: /^Levels ?: several/ }));
  const chosen = () =>
    screen.getAllByRole('switch', { checked: true }).map(({ textContent }) => textContent);
  return { chosen, level: screen.getByRole<HTMLButtonElement>('button', { name: /^3/ }) };
};

test('of the whole class nobody is chosen until it is said who', async () => {
  const { chosen, level } = await openSeveral('');
  expect(screen.queryAllByRole('switch', { checked: true })).toEqual([]);
  expect(level.disabled).toBe(true);
  await userEvent.click(screen.getByRole('button', { name: 'All' }));
  expect(chosen()).toHaveLength(3);
  expect(level.disabled).toBe(false);
});

test('of a telescope group all are chosen at first', async () => {
  const { chosen, level } = await openSeveral('one');
  expect(chosen()).toEqual(['annin', 'benin']);
  expect(level.disabled).toBe(false);
});
