import type { DressRehearsalDraft } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-submission';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { balanceReview } from '../balance/balance-review';
import type { AnswerLine } from '../bench/bench-parts';
import { clockAndPlaceReview } from '../clock-and-place/clock-and-place-review';
import { finderReview } from '../finder/finder-review';
import { levelReview } from '../level/level-review';
import { powerReview } from '../power/power-review';
import { putItTogetherReview } from '../put-it-together/put-it-together-review';
import { packUpName } from './pack-up-words';
import { stageWords } from './stage-words';
import type { RehearsalStage } from '@/lib/rehearsal/stages';

/** An answer at "Dress rehearsal" in words: for its student before it is sent, and for the teacher's answer key. */
export function dressRehearsalReview(
  { benches: work, plannedPair, log, clutchesLocked, packedUp }: Omit<DressRehearsalDraft, 'at'>,
  { benches: tasks }: DressRehearsalVariant,
): readonly AnswerLine[] {
  const { first, second } = plannedPair;
  const confirmed = log.filter((action) => action.do === 'this-is-the-star').length;
  const judged = log.findLast((action) => action.do === 'judge');
  const start = log.findLast((action) => action.do === 'set-start');
  return [
    ...under(
      'put-it-together',
      putItTogetherReview(work['put-it-together'], tasks['put-it-together']),
    ),
    ...under('level', levelReview(work.level, tasks.level)),
    ...under('balance', balanceReview(work.balance, tasks.balance)),
    ...under('finder', finderReview(work.finder, tasks.finder)),
    ...under('power', powerReview(work.power, tasks.power)),
    ...under(
      'clock-and-place',
      clockAndPlaceReview(work['clock-and-place'], tasks['clock-and-place']),
    ),
    ...under('start-position', [
      {
        asked: 'The tube at the start',
        answer:
          start === undefined
            ? 'Not laid'
            : `${start.azimuthDeg.toFixed(1)}° from true north, ${start.altitudeDeg.toFixed(1)}° up; clutches ${clutchesLocked ? 'locked' : 'loose'}`,
      },
    ]),
    ...under('pick-the-pair', [
      {
        asked: 'Stars planned',
        answer: first === null || second === null ? 'None' : 'Two',
      },
    ]),
    ...under('alignment-run', [
      { asked: 'Stars confirmed', answer: confirmed === 0 ? 'None' : String(confirmed) },
    ]),
    ...under('check-on-a-third', [
      {
        asked: 'Would you observe with it?',
        answer: judged === undefined ? 'Not said' : judged.trust ? 'Yes' : 'No',
      },
    ]),
    ...under('pack-up', [
      {
        asked: 'Put away, in this order',
        answer:
          packedUp.length === 0 ? 'Nothing' : packedUp.map((step) => packUpName(step)).join('; '),
      },
    ]),
  ];
}

/** Stages ask alike: each line says whose it is. */
const under = (stage: RehearsalStage, lines: readonly AnswerLine[]): AnswerLine[] =>
  lines.map(({ asked, answer }) => ({ asked: `${stageWords[stage].short}: ${asked}`, answer }));
