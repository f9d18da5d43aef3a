import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { StudentAssignment, StudentPart } from '@/lib/data/attempts';
import { AssignmentCard } from './assignment-card';

vi.mock('./actions', () => ({ startCheck: vi.fn(), startPracticeRound: vi.fn() }));
afterEach(cleanup);

const now = new Date('2026-12-01T10:00:00Z');
const part = (change: Partial<StudentPart>): StudentPart => ({
  partId: 'p',
  lab: 'level',
  templates: [],
  weight: 1,
  state: 'not-started',
  mark: null,
  gateFailed: false,
  attemptsUsed: 0,
  attemptsAllowed: 2,
  openAttemptId: null,
  lastSubmittedAttemptId: null,
  feedbackVisible: true,
  ...change,
});
const card = (change: Partial<StudentAssignment>): StudentAssignment => ({
  assignmentId: 'a',
  title: 'An evening',
  placeName: 'Keswick',
  dueAt: null,
  dueTimeZone: 'Europe/London',
  state: 'in-progress',
  mark: null,
  markByHand: false,
  passMark: 70,
  gateFailed: false,
  feedbackVisible: true,
  toSignOff: [],
  lessons: ['level-enough'],
  parts: [part({})],
  ...change,
});
const several = card({
  lessons: ['level-enough', 'the-night'],
  mark: 100,
  parts: [
    part({
      partId: 'one',
      state: 'complete',
      mark: 100,
      attemptsUsed: 1,
      lastSubmittedAttemptId: 'done',
    }),
    part({ partId: 'two', lab: 'power', state: 'in-progress', openAttemptId: 'open' }),
    part({ partId: 'three', lab: 'lesson-questions', templates: ['the-night'], weight: 0 }),
  ],
});

describe('the card of an assignment', () => {
  it('of one part is as simple as one part is', () => {
    render(<AssignmentCard assignment={card({})} now={now} />);
    expect(screen.getByRole('button', { name: 'Start the check' })).toBeTruthy();
    expect(screen.getByRole('link', { name: 'Read the lesson' })).toBeTruthy();
    expect(screen.queryByRole('list')).toBeNull();
  });

  it('leads to the lessons on what its lab asks where the teacher named none', () => {
    const { unmount } = render(<AssignmentCard assignment={card({ lessons: [] })} now={now} />);
    expect(screen.getByRole('link', { name: 'Read the lesson' }).getAttribute('href')).toContain(
      'level-enough',
    );
    unmount();
    const kit = [part({ lab: 'put-it-together' })];
    render(<AssignmentCard assignment={card({ lessons: [], parts: kit })} now={now} />);
    expect(screen.getAllByRole('link').map((link) => link.textContent)).toEqual([
      'Read: What is in the case',
      'Read: Standing it up',
    ]);
    cleanup();
    render(<AssignmentCard assignment={{ ...several, lessons: [] }} now={now} />);
    expect(screen.getByText('Lessons that help:')).toBeTruthy();
    expect(
      ['Level enough', 'Power without smoke', 'The night'].map(
        (name) => screen.getAllByRole('link', { name }).length,
      ),
    ).toEqual([1, 1, 1]);
  });

  it('of several has each in its order, with its state in words, its mark and its next step', () => {
    render(<AssignmentCard assignment={several} now={now} />);
    const [one, two, three] = screen.getAllByRole('listitem').map((item) => within(item));
    expect(one?.getByText('complete')).toBeTruthy();
    expect(one?.getByText('100 of 100')).toBeTruthy();
    expect(one?.getByRole('link', { name: 'See result: Level' }).getAttribute('href')).toContain(
      'done',
    );
    expect(two?.getByRole('link', { name: 'Go on: Power' }).getAttribute('href')).toContain('open');
    expect(three?.getByRole('button', { name: 'Start: Questions: The night' })).toBeTruthy();
    expect(three?.getByText('does not count')).toBeTruthy();
    expect(screen.getByText('Your mark so far')).toBeTruthy();
    expect(screen.getByRole('link', { name: 'The night' })).toBeTruthy();
  });

  it('given back in time can be started; given back too late says whom to ask instead', () => {
    const returned = { state: 'returned' as const, attemptsUsed: 0, lastSubmittedAttemptId: 'in' };
    const due = (dueAt: string) => card({ state: 'returned', dueAt, parts: [part(returned)] });
    render(<AssignmentCard assignment={due('2026-12-01T10:00:00Z')} now={now} />);
    expect(screen.getByText('Your teacher has given it back to you: try once more.')).toBeTruthy();
    expect(screen.getByRole('button', { name: 'Start the check' })).toBeTruthy();
    cleanup();
    render(<AssignmentCard assignment={due('2026-12-01T09:59:59Z')} now={now} />);
    expect(screen.getByText(/but the due time is over: ask for more time/)).toBeTruthy();
    expect(screen.queryByText(/try once more/)).toBeNull();
    expect(screen.queryByRole('button', { name: 'Start the check' })).toBeNull();
  });

  it('for a teacher’s look leads to each task and can start nothing', () => {
    for (const assignment of [card({}), several]) {
      render(<AssignmentCard assignment={assignment} now={now} tryAt={(id) => `/try/${id}`} />);
      const links = screen.getAllByRole('link', { name: /^Start/ });
      expect(links.map((link) => link.getAttribute('href'))).toEqual(
        assignment.parts.map(({ partId }) => `/try/${partId}`),
      );
      expect(screen.queryByRole('button')).toBeNull();
      cleanup();
    }
  });
});
