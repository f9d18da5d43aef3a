import type { NotReady } from '@/lib/rehearsal/handed-on';
import type { RehearsalStage } from '@/lib/rehearsal/stages';

/** Each stage in full, and as short as a line of eleven needs it. */
export const stageWords: Readonly<Record<RehearsalStage, { title: string; short: string }>> = {
  'put-it-together': { title: 'Put it together', short: 'Build' },
  level: { title: 'Level the tripod', short: 'Level' },
  balance: { title: 'Balance the tube', short: 'Balance' },
  finder: { title: 'Set the finder', short: 'Finder' },
  power: { title: 'Power', short: 'Power' },
  'clock-and-place': { title: 'Clock and place', short: 'Clock' },
  'start-position': { title: 'Start position and clutches', short: 'Start' },
  'pick-the-pair': { title: 'Plan the pair', short: 'Pair' },
  'alignment-run': { title: 'Align on two stars', short: 'Align' },
  'check-on-a-third': { title: 'Check on a third star', short: 'Check' },
  'pack-up': { title: 'Pack up', short: 'Pack up' },
};

/** Why the alignment cannot begin, and where to put that right. */
export const notReadyWords: Readonly<
  Record<NotReady, { title: string; text: string; stage: RehearsalStage }>
> = {
  dark: {
    title: 'The computer is dark',
    text: 'It has no power that it can use, so no motor turns. Go back to Power and see it running.',
    stage: 'power',
  },
  'not-taken': {
    title: 'The computer waits for clock and place',
    text: 'Its form is not full, or holds something that cannot be. Go back to Clock and place and fill in every row.',
    stage: 'clock-and-place',
  },
  'resets-at-once': {
    title: 'The lamp goes dark as soon as the motors turn',
    text: 'The supply sags below what the computer needs, so it begins anew at the first slew. Go back to Power: other cells, all the same way round, or another supply.',
    stage: 'power',
  },
};

/** Said wherever something is done that an alignment under way does not survive. */
export const runBeginsAgainText =
  'The alignment that was under way is lost by this: set the start position and align again.';
