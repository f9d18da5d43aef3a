import type { LessonSlug } from '../course/lessons';
import type { MisconceptionId } from '../items/misconceptions';
import type { Lab } from '../variants/labs';

/** What a lab's result says of one thing that went wrong: its code, and the mistake it names if any. */
export type NamedSlip = {
  code: string;
  /** A known mistake behind a wrong figure, or why something failed. */
  why: string | null;
  /** Of a rehearsal: the stage it happened at, and that stage's own code. */
  stage: string | null;
  first: string | null;
};

/** By lab, then by the slip's code, or by code and known mistake. Our judgement. */
const ideas: Readonly<Partial<Record<Lab, Readonly<Record<string, MisconceptionId>>>>> = {
  level: {
    'wrong-way': 'bubble-shows-low-side',
    'trusted-untrue-vial': 'vial-never-lies',
  },
  balance: {
    'creeps/balanced-level-only': 'level-balance-is-all',
    'part-missing': 'balance-it-bare',
  },
  power: {
    'run-time-off/capacities-added': 'series-hours-add',
    'run-time-off/cold-forgotten': 'cold-does-not-matter',
  },
  finder: {
    'near-target': 'near-target-good',
    'tube-moved-to-the-dot': 'tube-to-the-dot',
  },
  field: {
    'magnifies-too-much': 'more-power-better',
    'field-off/apparent-field': 'field-is-apparent',
  },
  'clock-and-place': {
    'zone-sign': 'zone-the-wrong-way',
    'summer-hour-forgotten': 'summer-time-hour',
    'summer-hour-added': 'summer-time-hour',
    'summer-hour-twice': 'summer-time-hour',
    'needle-not-corrected': 'magnetic-for-true-north',
  },
  'pick-the-pair': {
    'too-close': 'two-stars-too-close',
    'same-azimuth': 'two-stars-in-line',
  },
  'alignment-run': {
    'planet-for-star': 'planet-taken-for-star',
    'empty-field': 'dot-is-centring',
    'final-approach': 'play-does-no-harm',
    'start-by-compass': 'magnetic-for-true-north',
    'trusted-a-bad-one': 'agreement-proves-all',
  },
};

/** The lesson that a lab practises. */
const lessonOfLab: Readonly<Partial<Record<Lab, LessonSlug>>> = {
  level: 'level-enough',
  balance: 'tube-on-and-balanced',
  power: 'power-without-smoke',
  finder: 'finder-by-day',
  field: 'eyepieces-and-views',
  'clock-and-place': 'clock-and-place',
  'pick-the-pair': 'choosing-alignment-stars',
  'alignment-run': 'align-on-two-stars',
};

const isLab = (name: string): name is keyof typeof ideas => Object.hasOwn(ideas, name);

/**
 * The beginner's idea that a slip in a lab gives away, with the lesson that answers it; null for a slip
 * that has no such idea behind it. A stage of the rehearsal is judged as its own lab.
 */
export function ideaBehind(
  lab: Lab,
  slip: NamedSlip,
): { misconception: MisconceptionId; lesson: LessonSlug } | null {
  if (slip.stage !== null && slip.first !== null)
    return isLab(slip.stage)
      ? ideaBehind(slip.stage, { code: slip.first, why: null, stage: null, first: null })
      : null;
  const known = ideas[lab];
  const misconception = known?.[`${slip.code}/${slip.why ?? ''}`] ?? known?.[slip.code];
  const lesson = lessonOfLab[lab];
  return misconception === undefined || lesson === undefined ? null : { misconception, lesson };
}
