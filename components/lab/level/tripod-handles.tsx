'use client';

import type { KeyboardEvent } from 'react';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { legName } from './level-words';
import { tripodShape, type LegShape, type Point } from './tripod-shape';
import { useLegDrag } from './use-leg-drag';
import type { TripodHand } from './use-tripod-hand';

type TripodHandlesProps = { variant: LevelVariant; hand: TripodHand };
type OneLegProps = TripodHandlesProps & { shape: LegShape };

/**
 * What can be taken hold of at a tripod: legs that slide, feet, locks, each from A to C. It lies over the
 * figure; locks and feet lie over the legs, as one leg may pass before another's lock.
 */
export function TripodHandles({ variant, hand }: TripodHandlesProps) {
  const shapes = [...tripodShape(variant.site, hand.state).legs].sort((a, b) => a.leg - b.leg);
  return (
    <>
      {shapes.map((shape) => (
        <LegHandle key={shape.leg} shape={shape} variant={variant} hand={hand} />
      ))}
      {shapes.map((shape) => (
        <g key={shape.leg}>
          <Foot shape={shape} hand={hand} />
          <Lock shape={shape} variant={variant} hand={hand} />
        </g>
      ))}
    </>
  );
}

/** Dragged up it grows, dragged down it shortens; arrow keys by 1 mm, with Shift by 10 mm. */
function LegHandle({ shape: { leg, hip, foot }, variant, hand }: OneLegProps) {
  const { lengthMm, open } = hand.state.legs[leg];
  const { slideTo, handlers } = useLegDrag(variant, hand, leg);
  const onKeyDown = (event: KeyboardEvent<SVGGElement>): void => {
    const way =
      event.key === 'ArrowUp' || event.key === 'ArrowRight'
        ? 1
        : event.key === 'ArrowDown' || event.key === 'ArrowLeft'
          ? -1
          : 0;
    if (way === 0) return;
    event.preventDefault();
    slideTo(lengthMm + way * (event.shiftKey ? 10 : 1));
  };
  // Close to the head the legs lie too near to each other to be told apart.
  const from = { x: hip.x + 0.2 * (foot.x - hip.x), y: hip.y + 0.2 * (foot.y - hip.y) };
  return (
    <g
      role="slider"
      tabIndex={0}
      aria-label={`Leg ${legName(leg)}`}
      aria-orientation="vertical"
      aria-valuenow={lengthMm}
      aria-valuemin={variant.site.legMinMm}
      aria-valuemax={variant.site.legMaxMm}
      aria-valuetext={`${String(lengthMm)} mm, ${open ? 'open' : 'locked'}`}
      className={`touch-none ${open ? 'cursor-ns-resize' : 'cursor-not-allowed'}`}
      onKeyDown={onKeyDown}
      {...handlers}
    >
      <path
        d={`M${String(from.x)} ${String(from.y)} L${String(foot.x)} ${String(foot.y)}`}
        stroke="transparent"
        strokeWidth="34"
      />
    </g>
  );
}

/** Pressed it opens or closes; pulled while open it takes its leg along. */
function Lock({ shape: { leg, joint }, variant, hand }: OneLegProps) {
  const { open } = hand.state.legs[leg];
  const { wasPull, handlers } = useLegDrag(variant, hand, leg);
  const press = (): void => {
    hand.act({ do: open ? 'lock' : 'open', leg });
  };
  return (
    <g
      {...pressable(`${open ? 'Lock' : 'Open'} leg ${legName(leg)}`, press)}
      className="cursor-pointer touch-none"
      {...handlers}
      onClick={() => {
        if (!wasPull()) press();
      }}
    >
      <Spot at={joint} />
    </g>
  );
}

function Foot({ shape: { leg, foot }, hand }: Omit<OneLegProps, 'variant'>) {
  const press = (): void => {
    hand.act({ do: 'tread-in', leg });
  };
  return (
    <g
      {...pressable(`Tread in foot ${legName(leg)}`, press)}
      className="cursor-pointer touch-manipulation"
      onClick={press}
    >
      <Spot at={foot} />
    </g>
  );
}

const pressable = (label: string, press: () => void) => ({
  role: 'button',
  tabIndex: 0,
  'aria-label': label,
  onKeyDown: (event: KeyboardEvent<SVGGElement>) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    press();
  },
});

/** As large as a fingertip on a phone. */
const Spot = ({ at }: { at: Point }) => <circle cx={at.x} cy={at.y} r="26" fill="transparent" />;
