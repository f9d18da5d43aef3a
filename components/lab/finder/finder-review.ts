import { hazardsAtEnd } from '@/lib/finder/setting';
import type { FinderDraft } from '@/lib/grading/bench/finder/finder-submission';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import type { AnswerLine } from '../bench/bench-parts';
import { aimsOf } from '@/lib/grading/bench/finder/finder-replay';
import type { SettingMoment } from '@/lib/finder/setting';
import { stateOf } from './finder-work';
import {
  aimInWords,
  companionNames,
  metresInWords,
  screwNames,
  standNames,
  turnsInWords,
} from './finder-words';
import { capitalised } from '@/lib/wording/capital';

/** An answer at "Finder" in words: for its student before it is sent, and for the teacher's answer key. */
export function finderReview(draft: FinderDraft, variant: FinderVariant): readonly AnswerLine[] {
  const state = stateOf(variant, draft);
  const { answers } = draft;
  const lines: AnswerLine[] = [];
  const say = (asked: string, answer: string): void => {
    lines.push({ asked, answer });
  };
  if (variant.day !== null) {
    say(
      'Beside you by day',
      state.companion === null ? 'not said' : companionNames[state.companion],
    );
    say('The telescope stood', state.stand === null ? 'not said' : standNames[state.stand]);
  }
  if (state.dayLock !== null) say('Set by day on', setOnInWords(variant, state.dayLock));
  say(
    state.dayLock === null ? 'Set on' : 'Set again at dusk on',
    setOnInWords(variant, state.atLock),
  );
  say(
    'Screws',
    screwNames
      .map((name, i) => `${name.toLowerCase()} ${turnsInWords(state.turns[i === 0 ? 0 : 1])}`)
      .join(', '),
  );
  const leftOpen = hazardsAtEnd(state).some(({ id }) => id === 'left-open') && !state.capsOn;
  say('Caps at the end', state.capsOn ? 'on' : leftOpen ? 'off, by day' : 'off');
  if (answers.offArcmin !== null)
    say('From the eyepiece’s middle', `${String(answers.offArcmin)}′`);
  if (answers.towardsHour !== null) say('Towards', `${String(answers.towardsHour)} o’clock`);
  if (answers.inLow !== null) say('In the wide view', answers.inLow ? 'yes' : 'no');
  if (answers.inHigh !== null) say('In the narrow view', answers.inHigh ? 'yes' : 'no');
  if (answers.setOnM !== null)
    say('It had been set on something', `${metresInWords(answers.setOnM)} away`);
  return lines;
}

function setOnInWords(variant: FinderVariant, moment: SettingMoment | null): string {
  const aim =
    moment === null
      ? undefined
      : aimsOf(variant, moment.dusk).find(({ id }) => id === moment.targetId);
  return aim === undefined ? 'nothing' : capitalised(aimInWords(aim));
}
