'use client';

import { arcminuteInWords } from '@/components/sky/angle-words';
import { Notice } from '@/components/ui/notice';
import { RadioGroup } from '@/components/ui/radio-group';
import type { LevelTemplate } from '@/lib/variants/bench/level/level-variant';
import { questionsOf, tiltSupposed } from './level-question';
import { useTripodHand, type LevelViewProps } from './use-tripod-hand';

const tasks: Readonly<Record<LevelTemplate, string>> = {
  'one-slope':
    'The ground falls one way. Level the head with as few moves as you can, then put the tube on.',
  'soft-foot':
    'One foot stands on soft turf. The head has to be level in the end, with the tube on it.',
  'leg-at-its-end':
    'One leg is at its end. Level the head with what is left, then put the tube on.',
  'turned-vial':
    'The vial sits on the arm, and the arm is clamped crosswise. Find the leg that its bubble means, level the head and put the tube on.',
  'untrue-vial':
    'This vial has been dropped and may be out of adjustment. The arm that carries it can be turned half round. Level the head, not the bubble, then put the tube on.',
  'read-then-move':
    'From down at a lock the vial is out of sight. Read it, reckon which leg goes which way and how far, and do it in one move. Then put the tube on.',
};

/** The task, how it stands, the question, and what to mind. */
export function LevelPanel(props: LevelViewProps) {
  const { variant } = props;
  const { state } = useTripodHand(props);
  return (
    <div className="space-y-4">
      <p>{tasks[variant.template]}</p>
      <p className="border-s-4 border-accent ps-3 text-sm">Moves so far: {state.moves}.</p>
      <p className="text-sm text-soft">
        Open a leg’s lock, slide the leg, lock it again: that is one move. Treading a foot in is
        none.
      </p>
      <HowLevel {...props} />
      <Notice tone="caution" title="Legs give way">
        Set the feet wide. Lock a leg before your hand lets go of it, and open no lock under the
        tube unless somebody has the weight. Keep fingers clear of joints and folding legs.
      </Notice>
    </div>
  );
}

/** "How level is level enough?", in three answers to choose. */
function HowLevel({ variant, draft, change }: LevelViewProps) {
  return (
    <section aria-labelledby="how-level" className="space-y-3 border-t border-line pt-3">
      <h3 id="how-level" className="font-semibold">
        How level is level enough?
      </h3>
      <p className="text-sm">
        {tiltSupposed(variant.question)} {arcminuteInWords}
      </p>
      {questionsOf(variant.question).map(({ name, legend, options }) => {
        const chosen = draft.answers[name];
        return (
          <RadioGroup
            key={name}
            name={name}
            legend={legend}
            options={options.map((label, index) => ({ value: String(index), label }))}
            value={chosen === null ? '' : String(chosen)}
            onValueChange={(value) => {
              change({ ...draft, answers: { ...draft.answers, [name]: Number(value) } });
            }}
          />
        );
      })}
    </section>
  );
}
