import type { PowerDraft, PowerSubmission } from '@/lib/grading/bench/power/power-submission';
import {
  isWired,
  type PowerTemplate,
  type PowerVariant,
} from '@/lib/variants/bench/power/power-variant';
import type { ComputerState } from '@/lib/power/terminals';
import { voltsText } from './power-words';
import { benchOf, readoutOf } from './power-play';

/** What is asked, in one or two sentences. */
export const taskText: Readonly<Record<PowerTemplate, string>> = {
  'fill-the-holder':
    'Put eight cells that belong together into the holder, each the right way round. Then connect everything in the right order and switch on.',
  'choose-the-supply':
    'All six plugs fit this telescope. Read the labels, say what is to be said of each supply, and power the telescope with the one that serves. You are a student, out on the field; the grass is damp.',
  'find-the-reversed':
    'Somebody has closed this holder with one or more cells the wrong way round. Find them with the meter, turn them, and switch the telescope on. How many were there?',
  'last-the-night':
    'Eight fresh cells and a cold evening. Work out whether they last, and whether a slew makes the computer start afresh.',
  'switch-on':
    'This is how somebody left the bench. One bay of the holder is not as it should be. Put it right, connect everything in the right order, and switch on.',
};

type Need = { isDone: (draft: PowerDraft, variant: PowerVariant) => boolean; todo: string };

const connected: Need = {
  isDone: (draft, variant) => benchOf(variant, draft).bench.handControl,
  todo: 'connect the hand control',
};
const plugged: Need = {
  isDone: (draft, variant) => benchOf(variant, draft).bench.plugged !== null,
  todo: 'connect a supply',
};
const switchedOn: Need = {
  isDone: (draft, variant) => benchOf(variant, draft).bench.on,
  todo: 'switch on',
};
const filled: Need = {
  isDone: (draft, variant) => benchOf(variant, draft).bench.bays.every(({ put }) => put !== null),
  todo: 'a cell into every bay',
};

const needs: Readonly<Record<PowerTemplate, readonly Need[]>> = {
  'fill-the-holder': [filled, connected, plugged, switchedOn],
  'switch-on': [filled, connected, plugged, switchedOn],
  'choose-the-supply': [
    {
      isDone: ({ verdicts }, { setup }) =>
        setup.supplies.every(({ id }) => verdicts[id] !== undefined),
      todo: 'a word on each supply',
    },
    connected,
    plugged,
    switchedOn,
  ],
  'find-the-reversed': [
    { isDone: ({ reversedCount }) => reversedCount !== null, todo: 'how many were reversed' },
    connected,
    plugged,
    switchedOn,
  ],
  'last-the-night': [
    { isDone: ({ meanMilliamperes }) => meanMilliamperes !== null, todo: 'the mean current' },
    { isDone: ({ runTimeHours }) => runTimeHours !== null, todo: 'the run time' },
    { isDone: ({ slewingVolts }) => slewingVolts !== null, todo: 'the volts while slewing' },
    { isDone: ({ resets }) => resets !== null, todo: 'whether it starts afresh' },
    { isDone: ({ plan }) => plan !== null, todo: 'your plan' },
  ],
};

/** Empty when nothing is. */
export const missing = (draft: PowerDraft, variant: PowerVariant): string =>
  needs[variant.template]
    .filter(({ isDone }) => !isDone(draft, variant))
    .map(({ todo }) => todo)
    .join('; ');

export const submissionOf = (draft: PowerDraft, variant: PowerVariant): PowerSubmission | null =>
  missing(draft, variant) === '' ? draft : null;

/** The state in one line, for the panel folded on a phone. */
export function summary(draft: PowerDraft, variant: PowerVariant): string {
  if (!isWired(variant)) {
    const left = needs[variant.template].filter(({ isDone }) => !isDone(draft, variant)).length;
    return left === 0 ? 'All five are answered' : `${String(left)} of 5 to be worked out`;
  }
  const { bench } = benchOf(variant, draft);
  const { volts, computer, restarted } = readoutOf(variant, draft, bench);
  const at = volts === null ? 'Nothing' : voltsText(volts);
  return `${at} at the socket: ${restarted ? 'it starts afresh' : shortly[computer]}`;
}

const shortly: Readonly<Record<ComputerState, string>> = {
  off: 'switched off',
  'no-power': 'no power',
  'too-few-volts': 'too few volts',
  running: 'running',
  reversed: 'polarity reversed',
  'over-voltage': 'too many volts',
};
