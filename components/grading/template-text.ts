import { benchTexts } from '@/components/lab/bench/bench-texts';
import { isBenchLab, type BenchLab } from '@/lib/variants/bench/bench-labs';
import { course, type LessonSlug } from '@/lib/course/lessons';
import { skillTitles } from '@/lib/course/skills';
import type { FaultTemplate } from '@/lib/variants/fault-variant';
import type { Lab } from '@/lib/variants/labs';
import type { PairTemplate } from '@/lib/variants/pair-variant';
import type { RunTemplate } from '@/lib/variants/run-variant';
import { lessonName } from '@/lib/wording/lesson-name';

export type TemplateText = { name: string; hint: string };

const pairText: Readonly<Record<PairTemplate, TemplateText>> = {
  'free-pair': { name: 'Choose any two', hint: 'Two stars out of the whole sky.' },
  partner: {
    name: 'A partner for a given star',
    hint: 'One star is given; the best second one is to be found.',
  },
  'cloud-bank': {
    name: 'Cloud over part of the sky',
    hint: 'A bank of cloud covers some of the good stars.',
  },
  'mount-proposes': {
    name: 'The mount proposes',
    hint: 'The pointing computer names one star after another; two are to be kept.',
  },
  'none-usable': {
    name: 'Nothing will do tonight',
    hint: 'Looks like any other task; the right answer is to say that there is no good pair.',
  },
};

const runText: Readonly<Record<RunTemplate, TemplateText>> = {
  'own-choice': {
    name: 'Both stars free',
    hint: 'The student picks both stars, so the pair is marked too.',
  },
  'mount-proposes': {
    name: 'The mount proposes',
    hint: 'The pointing computer names one star after another; each may be turned down.',
  },
  'first-given': {
    name: 'The first star is given',
    hint: 'The second is the student’s choice, so the pair is marked too.',
  },
  'in-the-way': {
    name: 'Something is in the way',
    hint: 'The first stars proposed stand behind a tree, a roof or a cloud: another one must be asked for.',
  },
  decoy: {
    name: 'Another bright light near by',
    hint: 'A planet or another bright star stands where the first slew ends, and is easily taken for the right one.',
  },
};

const faultText: Readonly<Record<FaultTemplate, TemplateText>> = {
  'first-slews': {
    name: 'From the first two slews',
    hint: 'Told: where the two slews landed and what the alignment said.',
  },
  'after-the-alignment': {
    name: 'After the alignment',
    hint: 'The alignment was believed; told is what the go-tos did afterwards.',
  },
  'one-slew': {
    name: 'From one slew',
    hint: 'Told: where the first slew landed. All else must be looked up.',
  },
  'card-first': {
    name: 'The settings card lies open',
    hint: 'Told: what was entered. Where the slews landed must be asked for.',
  },
  bystander: {
    name: 'What a bystander noticed',
    hint: 'Told: what somebody saw on the ground, and then what the sky says.',
  },
};

/** A set asks about lessons: a kind of its tasks is a lesson. */
const questionsText: Readonly<Record<string, TemplateText>> = Object.fromEntries(
  course.map(({ slug, skill }): [LessonSlug, TemplateText] => [
    slug,
    { name: lessonName(slug), hint: skillTitles[skill] },
  ]),
);

const textsOf: Readonly<Record<Exclude<Lab, BenchLab>, Readonly<Record<string, TemplateText>>>> = {
  'pick-the-pair': pairText,
  'alignment-run': runText,
  'what-went-wrong': faultText,
  'lesson-questions': questionsText,
};

/** A kind of task as the teacher chooses it; a word of no kind of that lab is shown as it stands. */
export function templateText(lab: Lab, template: string): TemplateText {
  const texts: Readonly<Record<string, TemplateText>> = isBenchLab(lab)
    ? benchTexts[lab].templates
    : textsOf[lab];
  return texts[template] ?? { name: template, hint: '' };
}

/** The labs, as a person chooses among them. */
export const labText: Readonly<Record<Lab, TemplateText>> = {
  ...benchTexts,
  'pick-the-pair': {
    name: 'Pick the pair',
    hint: 'Choose two alignment stars under the evening’s own sky.',
  },
  'alignment-run': {
    name: 'Alignment run',
    hint: 'Slew, find, centre and confirm two stars on a simulated mount, then judge the result.',
  },
  'what-went-wrong': {
    name: 'What went wrong?',
    hint: 'Read what a faulty evening shows, and name the fault and its cure.',
  },
  'lesson-questions': {
    name: 'Questions on lessons',
    hint: 'Eight questions on the lessons you choose, other ones for each student. About a quarter of an hour.',
  },
};
