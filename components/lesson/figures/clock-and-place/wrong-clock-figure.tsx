'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Checkbox } from '@/components/ui/checkbox';
import { DegreeControl } from '../degree-control';
import { startingError, toldRight, type ToldWrong } from './starts';
import { WrongClockDrawing } from './wrong-clock-drawing';
import { wrongClockFacts } from './wrong-clock-facts';
import { wrongClockWords } from './wrong-clock-words';

const mostMinutes = 180;

/** A mount to be told the wrong time and place, before and after an alignment. */
export function WrongClockFigure() {
  const [told, setTold] = useState<ToldWrong>(startingError);
  const [aligned, setAligned] = useState(false);
  const facts = wrongClockFacts(told, aligned);
  const words = wrongClockWords(told, facts, aligned);
  const { clockMinutes } = told;
  const putClock = (minutes: number) =>
    setTold({ ...told, clockMinutes: Math.max(-mostMinutes, Math.min(mostMinutes, minutes)) });
  return (
    <div>
      <WrongClockDrawing facts={facts} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 grid gap-x-8 gap-y-3 sm:grid-cols-2">
        <fieldset className="min-w-0">
          <legend className="text-sm font-semibold">
            Clock:{' '}
            <span className="font-figures">
              {clockMinutes === 0
                ? 'right'
                : `${String(Math.abs(clockMinutes))} min ${clockMinutes > 0 ? 'ahead' : 'behind'}`}
            </span>
          </legend>
          <div className="mt-1 flex flex-wrap gap-2">
            <Button onClick={() => putClock(clockMinutes - 60)}>An hour back</Button>
            <Button onClick={() => putClock(clockMinutes + 60)}>An hour ahead</Button>
            <Button onClick={() => putClock(clockMinutes - 4)}>4 min back</Button>
            <Button onClick={() => putClock(clockMinutes + 4)}>4 min ahead</Button>
            <Button onClick={() => setTold(toldRight)}>All right</Button>
          </div>
          <Checkbox
            className="mt-3"
            label="Aligned on Vega and Capella"
            checked={aligned}
            onChange={(event) => setAligned(event.target.checked)}
          />
        </fieldset>
        <div>
          <DegreeControl
            label="Longitude too far east (minus is west)"
            value={told.longitudeDeg}
            min={-30}
            max={30}
            onChange={(longitudeDeg) => setTold({ ...told, longitudeDeg })}
          />
          <DegreeControl
            label="Latitude too far north (minus is south)"
            value={told.latitudeDeg}
            min={-20}
            max={20}
            onChange={(latitudeDeg) => setTold({ ...told, latitudeDeg })}
          />
        </div>
      </div>
    </div>
  );
}
