'use client';

import { ArrowDown, ArrowLeft, ArrowRight, ArrowUp } from 'lucide-react';
import type { ReactNode } from 'react';
import { useId, useState } from 'react';
import { Select } from '@/components/ui/select';
import type { WhichEyepiece } from '@/lib/finder/setting';
import { tubeMoved } from '@/lib/finder/sights';
import { finderHand, type FinderProps } from './finder-hand';
import { eyepieceName } from './finder-words';

/** How far one press moves the tube, arcminutes. */
const stepsArcmin = [60, 15, 5, 1, 0.5] as const;

const round = (deg: number): number => Math.round(deg * 10_000) / 10_000;

/** Caps, eyepiece, and small moves of the tube: the same beside the drawing and in the table. */
export function EyepieceControls(props: FinderProps) {
  const { variant } = props;
  const { state, act } = finderHand(props);
  const id = useId();
  const [step, setStep] = useState<number>(15);
  const move = (across: number, upward: number) => () => {
    const to = tubeMoved(state.tube, { rightArcmin: across * step, upArcmin: upward * step });
    act({ do: 'move', azimuthDeg: round(to.azimuthDeg) % 360, altitudeDeg: round(to.altitudeDeg) });
  };
  const icon = 'size-4';
  return (
    <div className="flex flex-wrap items-center justify-center gap-x-3 gap-y-2 text-sm">
      <HandButton
        pressed={!state.capsOn}
        onPress={() => {
          act({ do: 'caps', on: !state.capsOn });
        }}
      >
        {state.capsOn ? 'Take the caps off' : 'Put the caps on'}
      </HandButton>
      <span role="group" aria-label="Eyepiece" className="flex gap-1">
        {eyepiecesOf(variant.eyepieces).map((which) => (
          <HandButton
            key={which}
            pressed={state.eyepiece === which}
            onPress={() => {
              act({ do: 'eyepiece', which });
            }}
          >
            {eyepieceName(variant, which)}
          </HandButton>
        ))}
      </span>
      <span role="group" aria-label="Move the tube" className="flex flex-wrap justify-center gap-1">
        <HandButton label="Tube left" onPress={move(-1, 0)}>
          <ArrowLeft aria-hidden="true" className={icon} />
        </HandButton>
        <HandButton label="Tube right" onPress={move(1, 0)}>
          <ArrowRight aria-hidden="true" className={icon} />
        </HandButton>
        <HandButton label="Tube up" onPress={move(0, 1)}>
          <ArrowUp aria-hidden="true" className={icon} />
        </HandButton>
        <HandButton label="Tube down" onPress={move(0, -1)}>
          <ArrowDown aria-hidden="true" className={icon} />
        </HandButton>
        <label htmlFor={id} className="sr-only">
          One press moves the tube by
        </label>
        <span className="w-24">
          <Select
            id={id}
            value={String(step)}
            onChange={(event) => {
              setStep(Number(event.target.value));
            }}
          >
            {stepsArcmin.map((size) => (
              <option key={size} value={String(size)}>
                {size === 60 ? '1°' : `${String(size)}′`}
              </option>
            ))}
          </Select>
        </span>
      </span>
    </div>
  );
}

const eyepiecesOf = (eyepieces: FinderProps['variant']['eyepieces']): readonly WhichEyepiece[] =>
  eyepieces.low.focalLengthMm === eyepieces.high.focalLengthMm ? ['low'] : ['low', 'high'];

type HandButtonProps = {
  /** For a button that shows a sign only. */
  label?: string;
  pressed?: boolean;
  disabled?: boolean;
  onPress: () => void;
  children: ReactNode;
};

/** A small button on the dark bench or on paper, pressed in while it holds. */
export function HandButton({ label, pressed, disabled, onPress, children }: HandButtonProps) {
  return (
    <button
      type="button"
      aria-label={label}
      title={label}
      aria-pressed={pressed}
      aria-disabled={disabled === true ? true : undefined}
      onClick={onPress}
      className="grid min-h-(--target) min-w-(--target) place-items-center rounded-md border border-strong bg-panel px-2.5 font-semibold text-ink hover:border-ink hover:bg-sunken aria-disabled:opacity-60 aria-pressed:border-accent aria-pressed:bg-accent aria-pressed:text-on-accent"
    >
      {children}
    </button>
  );
}
