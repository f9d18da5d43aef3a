import { capitalised } from '@/lib/wording/capital';
import {
  brightnessInWords,
  positionInWords,
  toHalfMagnitude,
} from '@/components/sky/position-words';
import type { SkyLight } from '@/components/sky/sky-lights';
import { FistDrawing } from './fist-drawing';
import { degreesInWords, shineInWords } from './pair-words';

/** A light as hand and eye tell it: a drawing, the words, the degrees, how bright. Never its name. */
export function LightCard({ light, letter }: { light: SkyLight; letter: string | null }) {
  return (
    <div className="space-y-2">
      <FistDrawing azimuthDeg={light.azimuthDeg} altitudeDeg={light.altitudeDeg} />
      <p>
        {letter === null ? null : <strong className="me-1">Light {letter}:</strong>}
        <span className="font-semibold">
          {capitalised(positionInWords(light.azimuthDeg, light.altitudeDeg))}
        </span>
        <span className="block font-figures text-sm text-soft">
          {capitalised(degreesInWords(light))}
        </span>
      </p>
      <p>
        {capitalised(brightnessInWords(light.seenAs))}{' '}
        <span className="font-figures text-sm text-soft">
          (looks like magnitude {toHalfMagnitude(light.seenAs)})
        </span>
        . {shineInWords(light)}
        {light.veiled ? ' It glimmers through cloud.' : ''}
      </p>
    </div>
  );
}
