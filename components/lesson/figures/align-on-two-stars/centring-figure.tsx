'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { orientationOf } from '@/lib/optics/image-orientation';
import type { FigureData, FigureKit } from '../figure-data';
import { centringFacts, centringStart, pressed, type Way } from './centring-facts';
import { CentringDrawing } from './centring-drawing';
import { centringWords, confirmedWords } from './centring-words';
import { centringFieldRadius } from './centring-field';
import { ChoiceControl } from './choice-control';

const steps = [
  { id: 'slow', arcmin: 2, title: 'Slow: 2′ a press' },
  { id: 'middle', arcmin: 10, title: 'Faster: 10′ a press' },
] as const;
const ways: readonly Way[] = ['left', 'right', 'up', 'down'];

/** An eyepiece, four ways to press, and the button: the play between motor and tube made visible. */
export function CentringFigure({ kits }: FigureData) {
  const [kitId, setKitId] = useState(kits[0]?.id ?? '');
  const [stepId, setStepId] = useState<string>(steps[1].id);
  const [state, setState] = useState(centringStart);
  const [confirmed, setConfirmed] = useState<string | null>(null);
  const kit = kits.find(({ id }) => id === kitId) ?? kits[0];
  if (kit === undefined) return null;
  const radius = centringFieldRadius(kit);
  const facts = centringFacts(state, {
    orientation: orientationOf(kit.tubeType),
    fieldRadiusArcmin: radius,
  });
  const step = steps.find(({ id }) => id === stepId) ?? steps[0];
  const press = (way: Way): void => {
    setConfirmed(null);
    setState((before) => pressed(before, way, step.arcmin));
  };
  const words = centringWords(facts);
  return (
    <div>
      <CentringDrawing facts={facts} fieldRadiusArcmin={radius} label={words} />
      <p role="status" className="mt-2 min-h-[3.2em]">
        {confirmed === null ? words : <strong className="font-semibold">{confirmed}</strong>}
      </p>
      <div className="no-print mt-2 flex flex-col gap-3">
        <div className="grid grid-cols-2 gap-2 sm:grid-cols-4">
          {ways.map((way) => (
            <Button key={way} onClick={() => press(way)}>
              {`Tube ${way}`}
            </Button>
          ))}
        </div>
        <div className="grid gap-3 sm:grid-cols-2">
          <ChoiceControl label="How fast" value={stepId} options={steps} onChange={setStepId} />
          <ChoiceControl
            label="Telescope"
            value={kit.id}
            options={kits.map(kitOption)}
            onChange={(id) => {
              setKitId(id);
              setConfirmed(null);
            }}
          />
        </div>
        <div className="flex flex-wrap gap-2">
          <Button
            variant="primary"
            onClick={() => setConfirmed(confirmedWords(facts, radius / 10))}
          >
            This is the star
          </Button>
          <Button
            onClick={() => {
              setState(centringStart);
              setConfirmed(null);
            }}
          >
            Start again
          </Button>
        </div>
      </div>
    </div>
  );
}

const wayOfShowing = {
  true: 'as it is',
  mirrored: 'left and right exchanged',
  turned: 'upside down',
} as const;
const kitOption = ({ id, name, tubeType }: FigureKit) => ({
  id,
  title: `${name}, ${wayOfShowing[orientationOf(tubeType)]}`,
});
