import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { SignOffSheet } from '@/lib/mastery/sign-off-sheet';
import { SignOffBoard } from './sign-off-board';

const today = '2026-12-05T13:00:00.000Z';
const sheet: SignOffSheet = {
  classId: 'class',
  className: '9b',
  timeZone: 'Europe/London',
  needed: 3,
  teacherId: 'teacher',
  telescopes: [],
  groups: [
    { id: 'heron', name: 'Heron', telescope: null },
    { id: 'wren', name: 'Wren', telescope: null },
  ],
  notes: [],
  agreement: null,
  students: (['wren', null, 'heron'] as const).map((groupId, index) => {
    const names = ['Ann', 'Ben', 'Cai'] as const;
    const displayName = names[index] ?? '';
    return { id: displayName, displayName, cardNumber: index + 1, groupId, indoors: [] };
  }),
};

beforeEach(() => {
  // What is typed waits on the device here: nobody answers.
  vi.stubGlobal(
    'fetch',
    vi.fn(() => Promise.reject(new TypeError('no connection'))),
  );
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  window.localStorage.clear();
});

async function openTable() {
  render(<SignOffBoard sheet={sheet} teacherId="teacher" group="" today={today} />);
  await userEvent.click(screen.getByText('Type in from the paper form'));
  const table = screen.getByRole('table', { name: 'Levels from the paper form' });
  const cell = (name: string) => within(table).getByRole<HTMLInputElement>('textbox', { name });
  return { table, cell };
}
const dateField = () => screen.getByLabelText<HTMLInputElement>('Date of the evening');
const giveDate = (value: string) => fireEvent.change(dateField(), { target: { value } });
const paper = '2026-11-20';
const save = (count: number) =>
  userEvent.click(screen.getByRole('button', { name: new RegExp(`^Save ${String(count)} note`) }));
const show = (group: string) =>
  userEvent.selectOptions(screen.getByLabelText('Telescope group'), group);
const queue = () => window.localStorage.getItem('duskbench-sign-off-queue:class:teacher') ?? '[]';

test('the columns stand as the paper forms lie: group by group, last who is in none', async () => {
  const { table } = await openTable();
  const [, ...heads] = within(table).getAllByRole('columnheader');
  expect(heads.map(({ textContent }) => textContent)).toEqual(['HeronCai', 'WrenAnn', 'Ben']);
});

test('by the keyboard alone a student costs a digit and an arrow', async () => {
  const { cell } = await openTable();
  giveDate(paper);
  cell('Cai, Levels').focus();
  await userEvent.keyboard('3{ArrowRight}4b{ArrowRight}2//');
  expect(cell('Ann, Levels').value).toBe('4b');
  await userEvent.keyboard('{Enter}{Shift>}{Enter}{/Shift}');
  expect(document.activeElement).toBe(cell('Ben, Levels'));
  await userEvent.click(screen.getByRole('button', { name: /^Save 3 notes of/ }));
  expect(JSON.parse(queue())).toMatchObject([
    { item: { studentId: 'Cai', level: 3, prompts: 0 } },
    { item: { studentId: 'Ann', level: 4, gates: ['fingers-in-legs'] } },
    { item: { studentId: 'Ben', level: 2, prompts: 2 } },
  ]);
});

test('below the last skill stands the next student', async () => {
  const { cell } = await openTable();
  cell('Cai, Keeps everyone safe').focus();
  await userEvent.keyboard('{Enter}');
  expect(document.activeElement).toBe(cell('Ann, Knows the kit'));
});

test('what is unclear is named, and nothing is saved before it is put right', async () => {
  const { cell } = await openTable();
  await userEvent.type(cell('Cai, Levels'), '3');
  await userEvent.type(cell('Ann, Levels'), '7');
  expect(screen.getByText(/^Unclear: Ann, Levels\./)).toBeTruthy();
  expect(screen.getByRole<HTMLButtonElement>('button', { name: /^Save 1 note/ }).disabled).toBe(
    true,
  );
});

test('an undo takes the notes back and puts the cells back', async () => {
  const { cell } = await openTable();
  giveDate(paper);
  await userEvent.type(cell('Cai, Levels'), '3');
  await save(1);
  expect(cell('Cai, Levels').value).toBe('');
  await userEvent.click(screen.getByRole('button', { name: 'Undo' }));
  expect(cell('Cai, Levels').value).toBe('3');
});

test('saving one group’s form leaves what was typed for another group', async () => {
  const { cell } = await openTable();
  giveDate(paper);
  await show('heron');
  await userEvent.type(cell('Cai, Levels'), '3');
  await show('wren');
  await userEvent.type(cell('Ann, Levels'), '2');
  expect(screen.getByText(/Typed for others and not saved yet: 1 cell \(Heron\)\./)).toBeTruthy();
  await save(1);
  expect(JSON.parse(queue())).toMatchObject([{ item: { studentId: 'Ann' } }]);
  expect(cell('Ann, Levels').value).toBe('');
  expect(screen.getByText(/1 note taken over.*not saved yet: 1 cell \(Heron\)\./)).toBeTruthy();
  await show('heron');
  expect(cell('Cai, Levels').value).toBe('3');
  expect(screen.queryByText(/Typed for others/)).toBeNull();
});

test('an undo puts the cells back after more was typed, and leaves that as it is', async () => {
  const { cell } = await openTable();
  giveDate(paper);
  await userEvent.type(cell('Cai, Levels'), '3');
  await userEvent.type(cell('Ann, Levels'), '2/');
  await userEvent.type(cell('Ben, Levels'), '1');
  await save(3);
  await userEvent.type(cell('Ann, Levels'), '4');
  // Typed and taken away again: nothing stands there.
  await userEvent.type(cell('Ben, Levels'), '2{Backspace}');
  expect(screen.queryByText(/taken over/)).toBeNull();
  await userEvent.click(screen.getByRole('button', { name: 'Undo' }));
  // Perhaps they have arrived: then they are taken back there.
  expect(queue()).not.toContain('"level":');
  expect(['Cai', 'Ann', 'Ben'].map((name) => cell(`${name}, Levels`).value)).toEqual([
    ...['3', '4', '1'],
  ]);
  expect(dateField().value).toBe(paper);
  expect(screen.getByText(/2 levels of Fri 20 Nov stand in the cells again/)).toBeTruthy();
  expect(screen.getByText(/Not put back.*: Ann, Levels: 2\/\./)).toBeTruthy();
});

test('an undo puts the evening’s date back', async () => {
  const { cell } = await openTable();
  giveDate(paper);
  await userEvent.type(cell('Cai, Levels'), '3');
  await save(1);
  giveDate('2026-11-21');
  await userEvent.click(screen.getByRole('button', { name: 'Undo' }));
  expect(cell('Cai, Levels').value).toBe('3');
  expect(dateField().value).toBe(paper);
});

test('an undo that brings two evenings together asks for the date', async () => {
  const { cell } = await openTable();
  giveDate(paper);
  await userEvent.type(cell('Cai, Levels'), '3');
  await save(1);
  giveDate('2026-11-21');
  await userEvent.type(cell('Ann, Levels'), '4');
  await userEvent.click(screen.getByRole('button', { name: 'Undo' }));
  expect([cell('Cai, Levels').value, cell('Ann, Levels').value]).toEqual(['3', '4']);
  expect(dateField().value).toBe('');
  expect(screen.getByText(/beside what you typed since/)).toBeTruthy();
});

test('a link is followed only after a word, while levels are not saved', async () => {
  const { cell } = await openTable();
  const link = document.createElement('a');
  link.href = '#elsewhere';
  document.body.append(link);
  const followed = vi.fn((event: Event) => event.preventDefault());
  link.addEventListener('click', followed);
  const ask = vi.spyOn(window, 'confirm').mockReturnValue(false);
  await userEvent.click(link);
  expect(ask).not.toHaveBeenCalled();
  await userEvent.type(cell('Cai, Levels'), '3');
  await userEvent.click(link);
  expect(ask).toHaveBeenCalledOnce();
  expect(followed).toHaveBeenCalledOnce();
  link.remove();
});

test('the date is asked for, and an evening still to come is not saved', async () => {
  const { cell } = await openTable();
  const button = () => screen.getByRole<HTMLButtonElement>('button', { name: /^Save 1 note/ });
  expect(dateField().value).toBe('');
  await userEvent.type(cell('Cai, Levels'), '3');
  expect(screen.getByText('Give the date that stands on the paper.')).toBeTruthy();
  expect(button().disabled).toBe(true);
  giveDate('2999-01-01');
  expect(screen.getByText('This evening is still to come.')).toBeTruthy();
  expect(button().disabled).toBe(true);
  giveDate(paper);
  expect(button().disabled).toBe(false);
});

test('in the afternoon last night’s paper is not saved under tonight’s date', async () => {
  vi.useFakeTimers({ now: new Date('2026-12-04T15:00:00Z'), toFake: ['Date'] });
  try {
    await openTable();
    giveDate('2026-12-04');
    expect(screen.getByText('Tonight’s form can be typed in from 16:00 on.')).toBeTruthy();
    giveDate('2026-12-03');
    expect(dateField().getAttribute('aria-invalid')).toBeNull();
  } finally {
    vi.useRealTimers();
  }
});
