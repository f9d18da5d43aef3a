import { cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { CannotBeSent, WaitingHere } from './waiting-here';

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  window.localStorage.clear();
});

const owner = { classId: 'class', teacherId: 'teacher' };
const queues = () => [{ ...owner, count: 3 }];

test('on another page of the desk it is said what waits, with the way to send it', () => {
  render(<WaitingHere queues={queues} path="/desk" />);
  expect(screen.getByText(/3 notes not sent yet/)).toBeTruthy();
  expect(screen.getByRole('link').getAttribute('href')).toBe('/desk/classes/class/sign-off');
});

test('on the class’s own sign-off page the page itself says it', () => {
  render(<WaitingHere queues={queues} path="/desk/classes/class/sign-off" />);
  expect(screen.queryByText(/not sent yet/)).toBeNull();
});

test('what an archived class does not take stays until it is given up with a second word', async () => {
  const name = 'duskbench-sign-off-queue:class:teacher';
  window.localStorage.setItem(name, '[]');
  const here = () => (window.localStorage.getItem(name) === null ? [] : queues());
  render(<CannotBeSent owner={owner} queues={here} />);
  const ask = vi.spyOn(window, 'confirm').mockReturnValue(false);
  await userEvent.click(screen.getByRole('button', { name: 'Give them up' }));
  expect(screen.getByText('3 notes of yours cannot be sent now')).toBeTruthy();
  ask.mockReturnValue(true);
  await userEvent.click(screen.getByRole('button', { name: 'Give them up' }));
  expect(window.localStorage.getItem(name)).toBeNull();
  expect(screen.queryByText(/cannot be sent now/)).toBeNull();
});
