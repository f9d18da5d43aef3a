'use client';

import { useEffect, useId, useState } from 'react';
import { Button } from '@/components/ui/button';
import { angleInWords } from '@/components/sky/angle-words';
import type { CentringStep } from './centring-path';
import { CentringPicture, type TakenForIt } from './centring-picture';
import { beforeConfirmText } from './run-result-words';

const frameMs = 60;
/** A replay takes about so many frames, however long the path is. */
const framesOfReplay = 80;

type CentringReplayProps = {
  starName: string;
  steps: readonly CentringStep[];
  fieldRadiusArcmin: number;
  /** What was taken for the star; null where nothing else was. */
  taken: TakenForIt | null;
};

/**
 * Where the tube pointed beside the star, step by step. It opens with the whole path drawn; who asked
 * for less motion is offered no replay that runs by itself.
 */
export function CentringReplay({ starName, steps, fieldRadiusArcmin, taken }: CentringReplayProps) {
  const last = steps.length - 1;
  const [shown, setShown] = useState(last);
  const [playing, setPlaying] = useState(false);
  const id = useId();
  useEffect(() => {
    if (!playing) return;
    const stride = Math.max(1, Math.round(last / framesOfReplay));
    const timer = window.setInterval(() => {
      setShown((before) => Math.min(last, before + stride));
    }, frameMs);
    return () => {
      window.clearInterval(timer);
    };
  }, [playing, last]);
  const running = playing && shown < last;
  const at = steps[shown];
  if (at === undefined) return null;
  const said = `${beforeConfirmText(at.secondsBefore)}: ${angleInWords(at.awayArcmin)} from ${starName}`;
  const goTo = (step: number): void => {
    setPlaying(false);
    setShown(Math.min(last, Math.max(0, step)));
  };
  return (
    <div>
      <CentringPicture
        title={`Where the tube pointed beside ${starName}. ${said}.`}
        {...{ starName, steps, shown, fieldRadiusArcmin, taken }}
      />
      <div className="no-print mt-2 space-y-2">
        <label htmlFor={id} className="block text-sm font-semibold">
          Follow the path to {starName}
        </label>
        <input
          id={id}
          type="range"
          min={0}
          max={last}
          value={shown}
          aria-valuetext={said}
          onChange={(event) => {
            goTo(Number(event.target.value));
          }}
          className="h-(--target) w-full accent-(--lamp-edge)"
        />
        <div className="flex flex-wrap gap-2">
          <Button
            onClick={() => {
              goTo(shown - 1);
            }}
            disabled={shown === 0}
          >
            One back
          </Button>
          <Button
            onClick={() => {
              goTo(shown + 1);
            }}
            disabled={shown === last}
          >
            One on
          </Button>
          <Button
            className="motion-reduce:hidden"
            onClick={() => {
              setShown(running ? shown : 0);
              setPlaying(!running);
            }}
          >
            {running ? 'Stop' : 'Play'}
          </Button>
        </div>
      </div>
      <p className="mt-1 text-sm text-soft">{said}.</p>
    </div>
  );
}
