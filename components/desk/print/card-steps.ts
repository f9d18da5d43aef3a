import { stepName } from '@/components/lab/put-it-together/step-words';
import { neededSteps, imagePartOf, type AssemblyStep } from '@/lib/assembly/steps';
import type { TubeType } from '@/lib/optics/image-orientation';
import { rehearsalStages, type RehearsalStage } from '@/lib/rehearsal/stages';

export type CardStep = {
  text: string;
  /** What must be minded before the step is taken. */
  caution?: string;
};

/** What can hurt somebody at a step of the building. */
const buildCautions: Readonly<Partial<Record<AssemblyStep, string>>> = {
  'spread-legs': 'Fingers clear of the folds.',
  'mount-on': 'Two people lift.',
  'tube-on': 'Two people lift; one holds until clamp and stop screw are in.',
};

/** The steps by day of that kind of tube; of an unknown one without what goes before the eyepiece. */
export function buildSteps(tubeType: TubeType | null): readonly AssemblyStep[] {
  if (tubeType !== null) return neededSteps({ tubeType, kind: 'build-by-day' });
  const image = imagePartOf.refractor;
  return neededSteps({ tubeType: 'refractor', kind: 'build-by-day' }).filter(
    (step) => step !== image,
  );
}

/** One line for each stage of an evening after the building, in the words of the lessons. */
const stageSteps: Readonly<
  Record<Exclude<RehearsalStage, 'put-it-together' | 'pack-up'>, readonly CardStep[]>
> = {
  level: [
    { text: 'Turn the leg locks until the bubble sits in the ring', caution: 'Hold the mount.' },
  ],
  balance: [
    { text: 'Balance: loosen the clamp, slide the tube, tighten', caution: 'Hold the tube first.' },
  ],
  finder: [
    {
      text: 'Finder: leave it capped by day. Set it on the first star after dark',
      caution: 'By day it is the teacher’s, away from the Sun.',
    },
  ],
  power: [
    {
      text: 'Power: hand control in, supply in, switch on last',
      caution: 'Cells of one kind, the right way round. Mains is the teacher’s.',
    },
  ],
  'clock-and-place': [{ text: 'Enter date, time, zone, summer time and place; read them back' }],
  'start-position': [
    { text: 'Tube level and to true north, clutches locked; no hand on it from now on' },
    {
      text: 'Caps off, on the teacher’s word',
      caution: 'Never before the Sun has set.',
    },
  ],
  'pick-the-pair': [
    { text: 'Choose the pair overleaf whose time it is; show each star to a partner' },
  ],
  'alignment-run': [
    { text: 'First star: eye, red dot, eyepiece. Last moves right and up. “This is the star”' },
    { text: 'Second star the same way' },
    { text: 'Read what it says: is that zero, is that lean yours?' },
  ],
  'check-on-a-third': [
    { text: '“Check on a third”, far from both. In the field: believe it. Else see below' },
  ],
};

/** Set-up of that telescope from case to third star, stage by stage as an evening goes. */
export function cardSteps(tubeType: TubeType | null): { build: CardStep[]; then: CardStep[] } {
  return {
    build: buildSteps(tubeType).map((step) => {
      const caution = buildCautions[step];
      return { text: stepName[step], ...(caution === undefined ? {} : { caution }) };
    }),
    then: rehearsalStages.flatMap((stage) =>
      stage === 'put-it-together' || stage === 'pack-up' ? [] : stageSteps[stage],
    ),
  };
}
