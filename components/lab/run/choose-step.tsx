'use client';

import { useState } from 'react';
import type { SkyLight } from '@/components/sky/sky-lights';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { LightCard } from '../pair/light-card';
import { pressedTwice } from './press-twice';
import type { RunModel } from './run-model';
import { choosingTask } from './run-words';
import { useRunSnapshot } from './use-run-lab';

type ChooseStepProps = {
  model: RunModel;
  /** A light the learner looks at, to know where to go. */
  picked: SkyLight | null;
  inTable: boolean;
  /** Beside the picture; the table has its own form for it. */
  onSetStart: () => void;
};

/** Which star: proposed, given, or named to the mount from its own list. */
export function ChooseStep({ model, picked, inTable, onSetStart }: ChooseStepProps) {
  const { stage, proposedHip } = useRunSnapshot(model);
  const { givenHip, proposals } = model.variant;
  const given = stage === 'choose-first' ? givenHip : null;
  const asked = proposedHip ?? given;
  return (
    <section aria-label="Which star" className="space-y-3">
      <p>
        {proposedHip !== null
          ? choosingTask.proposed
          : given !== null
            ? choosingTask.given
            : choosingTask.own}
      </p>
      {asked === null ? (
        <>
          {proposals === null ? null : (
            <p className="rounded-md bg-sunken p-3">
              The mount has no further star to propose. Name one from its list.
            </p>
          )}
          {picked !== null && !inTable ? <LightCard light={picked} letter={null} /> : null}
          <NamedStar model={model} />
        </>
      ) : (
        <>
          <p className="text-lg leading-snug">
            {proposedHip === null ? 'Your first star is ' : 'The mount proposes '}
            <strong className="font-semibold">{model.nameOf(asked)}</strong>.
          </p>
          <div className="grid gap-2 select-none">
            <Button
              variant="primary"
              size="large"
              onClick={() => {
                model.goTo(asked);
              }}
            >
              Drive there
            </Button>
            {proposedHip === null ? null : (
              <Button
                onClick={() => {
                  if (!pressedTwice(model, 'another-star')) model.anotherStar();
                }}
              >
                Another star
              </Button>
            )}
          </div>
        </>
      )}
      {stage === 'choose-first' && !inTable ? (
        <Button className="w-full" onClick={onSetStart}>
          Set the start position again
        </Button>
      ) : null}
    </section>
  );
}

/** The mount's list of bright stars; it tells the mount which star will be centred. */
export function NamedStar({
  model,
  label = 'The star you will centre',
}: {
  model: RunModel;
  label?: string;
}) {
  const { confirmed, minutes } = useRunSnapshot(model);
  const [list] = useState({ minutes: -1, stars: model.lists.mountList() });
  const [hip, setHip] = useState<number | null>(null);
  const stars = minutes - list.minutes > 10 ? model.lists.mountList() : list.stars;
  return (
    <div className="space-y-3">
      <Field
        label={label}
        hint={`Bright stars that the mount believes are up: ${String(stars.length)}.`}
      >
        {(control) => (
          <Select
            {...control}
            value={hip ?? ''}
            onChange={(event) => {
              setHip(event.target.value === '' ? null : Number(event.target.value));
            }}
          >
            <option value="">Choose a name …</option>
            {stars
              .filter((star) => !confirmed.some((one) => one.hip === star.hip))
              .map((star) => (
                <option key={star.hip} value={star.hip}>
                  {star.name}
                </option>
              ))}
          </Select>
        )}
      </Field>
      <Button
        variant="primary"
        size="large"
        className="w-full select-none"
        onClick={() => {
          if (hip === null) model.tell('Choose a name first.');
          else model.goTo(hip);
        }}
      >
        Drive there
      </Button>
    </div>
  );
}
