import type { PairDraft, PairSubmission } from '@/lib/grading/pair-submission';
import type { SkyObjectId } from '@/lib/pointing/answer-key';
import type { PairLabSky } from './pair-lab-sky';

type Task = Pick<PairLabSky, 'task' | 'givenHip' | 'proposals'>;

/** What has been chosen so far, and the steps back. Pure: the lab's screen is drawn from it. */
export type PairChoice = {
  draft: PairDraft;
  /** Stars whose question about look-alikes has been answered. */
  answered: readonly number[];
  past: readonly Pick<PairChoice, 'draft' | 'answered'>[];
};

export type PairChoiceAction =
  | { type: 'keep'; hip: number }
  | { type: 'drop'; hip: number }
  | { type: 'answer'; hip: number; lookAlike: SkyObjectId | null }
  | { type: 'ask-again'; hip: number }
  | { type: 'another-star'; nextIndex: number }
  | { type: 'first-proposal-again' }
  | { type: 'say-none' }
  | { type: 'unsay-none' }
  | { type: 'undo' };

/**
 * A resumed draft keeps its picks; a "nothing near it" is asked again, for it was not stored. About a
 * given star nothing is asked: choosing it was not the learner's doing.
 */
export function startChoice(draft: PairDraft, task: Task): PairChoice {
  const given =
    task.givenHip !== null && !draft.picks.some((pick) => pick.hip === task.givenHip)
      ? [{ hip: task.givenHip, lookAlike: null }]
      : [];
  const picks = [...given, ...draft.picks].slice(0, 2);
  return {
    draft: { ...draft, picks },
    answered: picks
      .filter((pick) => pick.lookAlike !== null || pick.hip === task.givenHip)
      .map((pick) => pick.hip),
    past: [],
  };
}

export function changeChoice(choice: PairChoice, action: PairChoiceAction): PairChoice {
  if (action.type === 'undo') {
    const before = choice.past.at(-1);
    if (before === undefined) return choice;
    return { ...before, past: choice.past.slice(0, -1) };
  }
  const next = applied(choice, action);
  if (next === null) return choice;
  const { draft, answered, past } = choice;
  return { ...next, past: [...past, { draft, answered }].slice(-40) };
}

/** The choice after an action, or null where the action changes nothing. */
function applied(
  { draft, answered }: PairChoice,
  action: Exclude<PairChoiceAction, { type: 'undo' }>,
): Pick<PairChoice, 'draft' | 'answered'> | null {
  switch (action.type) {
    case 'keep':
      if (draft.picks.length >= 2 || draft.picks.some((pick) => pick.hip === action.hip))
        return null;
      return {
        draft: {
          ...draft,
          saysNone: false,
          picks: [...draft.picks, { hip: action.hip, lookAlike: null }],
        },
        answered,
      };
    case 'drop':
      return {
        draft: { ...draft, picks: draft.picks.filter((pick) => pick.hip !== action.hip) },
        answered: answered.filter((hip) => hip !== action.hip),
      };
    case 'answer':
      return {
        draft: {
          ...draft,
          picks: draft.picks.map((pick) =>
            pick.hip === action.hip ? { ...pick, lookAlike: action.lookAlike } : pick,
          ),
        },
        answered: [...answered.filter((hip) => hip !== action.hip), action.hip],
      };
    case 'ask-again':
      return { draft, answered: answered.filter((hip) => hip !== action.hip) };
    case 'another-star':
      return { draft: { ...draft, proposalIndex: Math.min(50, action.nextIndex) }, answered };
    case 'first-proposal-again':
      return { draft: { ...draft, proposalIndex: 0 }, answered };
    case 'say-none':
      return { draft: { ...draft, saysNone: true }, answered };
    case 'unsay-none':
      return { draft: { ...draft, saysNone: false }, answered };
  }
}

/** Where the learner is. */
export type PairStage =
  | { at: 'first-star' | 'second-star' }
  | { at: 'look-alike'; hip: number }
  | { at: 'review' }
  | { at: 'none' };

export function stageOf({ draft, answered }: PairChoice): PairStage {
  if (draft.saysNone) return { at: 'none' };
  if (draft.picks.length === 0) return { at: 'first-star' };
  if (draft.picks.length === 1) return { at: 'second-star' };
  const open = draft.picks.find((pick) => !answered.includes(pick.hip));
  return open === undefined ? { at: 'review' } : { at: 'look-alike', hip: open.hip };
}

/** The star the mount proposes now; null when the list is used up. Kept stars are passed over. */
export function proposalOf(choice: PairChoice, proposals: readonly number[] | null): number | null {
  if (proposals === null) return null;
  const kept = choice.draft.picks.map((pick) => pick.hip);
  return proposals.slice(choice.draft.proposalIndex).find((hip) => !kept.includes(hip)) ?? null;
}

/** Turning a proposal down means passing it and every kept star before it. */
export function indexAfterProposal(
  choice: PairChoice,
  proposals: readonly number[],
  proposal: number,
): number {
  const at = proposals.indexOf(proposal, choice.draft.proposalIndex);
  return at < 0 ? proposals.length : at + 1;
}

/** What is sent: null while something is missing. In 'partner' the given star comes first. */
export function submissionOf(choice: PairChoice, givenHip: number | null): PairSubmission | null {
  const stage = stageOf(choice);
  if (stage.at === 'none') return { kind: 'none-usable' };
  if (stage.at !== 'review') return null;
  const given = choice.draft.picks.find((pick) => pick.hip === givenHip);
  const ordered =
    given === undefined
      ? choice.draft.picks
      : [given, ...choice.draft.picks.filter((pick) => pick !== given)];
  const [first, second] = ordered;
  if (first === undefined || second === undefined) return null;
  return { kind: 'pair', stars: [first, second] };
}
