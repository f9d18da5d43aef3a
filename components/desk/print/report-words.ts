import { skillTitles, type Skill } from '@/lib/course/skills';
import type { GradebookState } from '@/lib/grading/gradebook-state';
import { labText } from '@/components/grading/template-text';
import { isMastered } from '@/components/grading/skills/skill-state-text';
import { neededInARow, type Mastery } from '@/lib/mastery/mastery';
import type { NextStep } from '@/lib/mastery/next-steps';
import type { ReportedSkill, ReportedWork } from '@/lib/data/student-report';

/** Each skill for somebody who has never stood at a telescope. */
export const plainSkill: Readonly<Record<Skill, string>> = {
  kit: 'Know the parts of a telescope and what each is for',
  assemble: 'Put a telescope together so that nothing falls',
  level: 'Set its stand level',
  balance: 'Balance the tube so that it stays where it is put',
  field: 'Choose an eyepiece and know what it will show',
  finder: 'Set the small sight beside the tube, safely',
  power: 'Give it power in the right order, with batteries',
  'clock-and-place': 'Tell it date, time and place without a slip',
  'choose-stars': 'Find two bright stars in the sky that serve well',
  align: 'Teach the telescope the sky by those two stars',
  diagnose: 'Find out what is wrong when it misses',
  safety: 'Keep eyes, hands and everybody else safe',
};

/** Where the student stands indoors, in a few words. */
export function indoorsWords({
  masteredAt,
  state,
  inARow,
}: Pick<Mastery, 'masteredAt' | 'state' | 'inARow'>): string {
  if (state === 'review-due') return 'Has shown it; due again';
  if (isMastered({ masteredAt })) return 'Has shown it';
  if (state === 'not-started') return 'Not begun';
  return `Is learning it: ${String(inARow)} of ${String(neededInARow)} in a row`;
}

const helpSeen = {
  1: 'it was shown',
  2: 'with active help',
  3: 'with a prompt now and then',
  4: 'alone',
} as const;

/** What was seen at the real telescope. */
export function outsideWords({ evenings, best, signedOff }: ReportedSkill['seen']): string {
  if (signedOff) return '✓ Signed off';
  if (best === null) return 'Not seen yet';
  const times = evenings === 1 ? 'Once' : `On ${String(evenings)} evenings`;
  return `${times}, at best ${helpSeen[best]}`;
}

/** How a piece of work stands, as a family reads it; of work in several parts, which are still to come. */
export function workWords({
  state,
  parts,
  notHandedIn,
}: Pick<ReportedWork, 'state' | 'parts' | 'notHandedIn'>): string {
  const cameIn = parts - notHandedIn.length;
  const open = state === 'missing' || state === 'in-progress';
  if (!open || cameIn === 0 || notHandedIn.length === 0) return plainState[state];
  const missing =
    notHandedIn.length > mostNamed
      ? `${String(notHandedIn.length)} parts`
      : new Intl.ListFormat('en-GB').format(notHandedIn.map((lab) => `“${labText[lab].name}”`));
  const late = state === 'missing' ? 'not handed in' : 'still to come';
  return `${String(cameIn)} of ${String(parts)} parts handed in; ${late}: ${missing}`;
}

/** More names than these make a line that nobody reads. */
const mostNamed = 3;

/** The states of work as a family reads them. */
const plainState: Readonly<Record<GradebookState, string>> = {
  'not-started': 'not begun',
  'in-progress': 'begun',
  submitted: 'handed in, not marked yet',
  late: 'handed in late, not marked yet',
  missing: 'not handed in',
  excused: 'excused',
  'needs-sign-off': 'passed; still to be shown at the telescope',
  'not-yet': 'not passed yet',
  complete: 'passed',
  returned: 'given back to try again',
};

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const toGoWords: Readonly<Record<number, string>> = {
  1: 'One more task to pass.',
  2: 'Two more in a row to pass.',
  3: 'Three in a row to pass.',
};

/** A next step as the teacher would say it. */
export function nextStepWords(step: NextStep): string {
  switch (step.do) {
    case 'look-and-try-again':
      return `Read the comment on “${step.title}” and do it once more.`;
    case 'hand-in':
      return `Hand in “${step.title}”.`;
    case 'pass':
      return `Try “${step.title}” again, if an attempt is left; practise it first.`;
    case 'review':
      return `Show once more: ${lowerFirst(plainSkill[step.skill])}. One pass does it.`;
    case 'practise':
      return `Next to learn: ${lowerFirst(plainSkill[step.skill])}. ${toGoWords[step.toGo] ?? ''}`;
    case 'show-outside':
      return `Ready to be seen at the telescope: ${step.skills.map((skill) => lowerFirst(skillTitles[skill])).join(', ')}.`;
  }
}
