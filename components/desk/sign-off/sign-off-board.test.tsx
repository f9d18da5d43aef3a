import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { SignOffSheet } from '@/lib/mastery/sign-off-sheet';
import { SignOffBoard } from './sign-off-board';

const sheet: SignOffSheet = {
  ...{ classId: 'class', className: '9b', timeZone: 'Europe/London', needed: 3 },
  ...{ teacherId: 'teacher', telescopes: [], groups: [], notes: [], agreement: null },
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
