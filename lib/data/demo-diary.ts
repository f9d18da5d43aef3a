import type { DemoSkill } from './demo-choice';

/** How an attempt of an invented student goes: to its end, that well, or so far only half. */
export type DemoAttempt = DemoSkill | 'under-way';
/** Attempts of each student in turn, by the roster's order. */
export type Diary = readonly (readonly DemoAttempt[])[];

export const pseudonyms = [
  'Alder',
  'Bramble',
  'Cricket',
  'Dipper',
  'Fern',
  'Hazel',
  'Juniper',
  'Lark',
  'Marten',
  'Otter',
  'Rowan',
  'Sorrel',
];

/** What each student does, by the roster's order; hours before the due time, negative when late. */
export const lastWeek: readonly (readonly [skill: DemoSkill, hoursBeforeDue: number][])[] = [
  [['best', 70]],
  [
    ['middling', 60],
    ['best', 20],
  ],
  [
    ['poor', 30],
    ['middling', 3],
  ],
  [['middling', 48]],
  [
    ['middling', 50],
    ['best', 26],
  ],
  [['best', -20]],
  [],
  [['poor', 5]],
  [['best', 90]],
  [],
  [
    ['middling', 44],
    ['middling', 43],
  ],
  [['best', 12]],
];
/** Tonight's so far: finished ones, one with a second attempt begun, two under way, the rest to come. */
export const tonight: Diary = [
  ['best'],
  ['poor', 'under-way'],
  [],
  ['middling'],
  [],
  ['under-way'],
  [],
  ['under-way'],
  ['best'],
  [],
  [],
  [],
];

/** Questions on two lessons. */
export const questions: Diary = [
  ['best'],
  ['middling'],
  ['poor', 'middling'],
  ['best'],
  [],
  ['under-way'],
  ['middling'],
  ['best'],
  ['under-way'],
  ['poor'],
  ['middling'],
  [],
];

/** The whole of an alignment: finished well and badly, broken off, still to do for the rest. */
export const runs: Diary = [
  ['best'],
  ['poor', 'middling'],
  ['under-way'],
  ['middling'],
  [],
  [],
  [],
  ['best'],
  ['poor'],
  [],
  ['under-way'],
  ['middling'],
];
/** Evenings gone wrong: the fault found, one that looks the same, a wrong one. */
export const findings: Diary = [
  ['middling', 'best'],
  ['best'],
  [],
  ['poor'],
  [],
  ['poor', 'under-way'],
  [],
  ['under-way'],
  ['best'],
  [],
  ['middling'],
  [],
];

/** "Put it together": most have done it, Fern has not. */
export const assembly: Diary = [
  ['middling', 'best'],
  ['best'],
  ['poor', 'middling'],
  ['best'],
  [],
  ['under-way'],
  [],
  ['middling'],
  ['best'],
  ['under-way'],
  ['middling'],
];
