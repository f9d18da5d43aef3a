import { skills, type Skill } from '../course/skills';
import { neededInARow, type Mastery } from './mastery';

/** What somebody should do next, the most pressing first. */
export type NextStep =
  | { do: 'look-and-try-again' | 'hand-in' | 'pass'; title: string }
  | { do: 'review' | 'practise'; skill: Skill; toGo: number }
  | { do: 'show-outside'; skills: readonly Skill[] };

type Standing = Pick<Mastery, 'state' | 'inARow'> & {
  skill: Skill;
  /** Signed off at the real telescope. */
  signedOff: boolean;
};

const mostSteps = 5;

/**
 * Next steps from where one learner stands: work that was given back, is missing or is not passed yet;
 * reviews that are due; the first skill of an evening that is not mastered; and what could be shown at the
 * real telescope. Five at most: a longer list is read by nobody. Our judgement.
 */
export function nextSteps(
  standings: readonly Standing[],
  work: readonly { title: string; state: string }[],
): NextStep[] {
  const titled = (state: string, step: Extract<NextStep, { title: string }>['do']): NextStep[] =>
    work.filter((one) => one.state === state).map(({ title }) => ({ do: step, title }));
  const inOrder = [...standings].sort((a, b) => skills.indexOf(a.skill) - skills.indexOf(b.skill));
  const reviews = inOrder
    .filter(({ state }) => state === 'review-due')
    .map(({ skill }): NextStep => ({ do: 'review', skill, toGo: 1 }));
  const next = inOrder.find(({ state }) => state === 'practising' || state === 'not-started');
  const ready = inOrder
    .filter(({ state, signedOff }) => !signedOff && isMasteredState(state))
    .map(({ skill }) => skill);
  const urgent = [
    ...titled('returned', 'look-and-try-again'),
    ...titled('missing', 'hand-in'),
    ...titled('not-yet', 'pass'),
    ...reviews,
  ];
  const ahead: NextStep[] = [
    ...(next === undefined
      ? []
      : [{ do: 'practise' as const, skill: next.skill, toGo: neededInARow - next.inARow }]),
    ...(ready.length === 0 ? [] : [{ do: 'show-outside' as const, skills: ready }]),
  ];
  // What lies ahead is never crowded out by what lies behind.
  return [...urgent.slice(0, mostSteps - ahead.length), ...ahead];
}

const isMasteredState = (state: Mastery['state']): boolean =>
  state === 'mastered' || state === 'review-due' || state === 'kept';
