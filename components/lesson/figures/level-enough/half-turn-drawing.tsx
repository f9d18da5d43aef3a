import { bubbleOverGround, type HalfTurn } from './half-turn-facts';
import { Bubble, VialGlass } from './vial-glass';

type HalfTurnDrawingProps = { one: HalfTurn; turned: boolean; seenBoth: boolean; label: string };

/** A vial over ground that stays: a tree beyond it, a gate on this side. Its mark goes round with it. */
export function HalfTurnDrawing({ one, turned, seenBoth, label }: HalfTurnDrawingProps) {
  const now = bubbleOverGround(one, turned);
  const before = bubbleOverGround(one, !turned);
  const middle = { x: 0, y: -(now.northMm + before.northMm) / 2 };
  return (
    <svg
      viewBox="-19 -21 38 42"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[20rem]"
    >
      <g className="fill-ink text-[2.4px]">
        <text y="-18" textAnchor="middle">
          tree
        </text>
        <text y="19.6" textAnchor="middle">
          gate
        </text>
      </g>
      <VialGlass>
        {seenBoth ? <Bubble place={before} ghost /> : null}
        <Bubble place={now} />
        {seenBoth ? (
          <path
            transform={`translate(${String(middle.x)} ${middle.y.toFixed(3)})`}
            d="M-1.2 -1.2 L1.2 1.2 M-1.2 1.2 L1.2 -1.2"
            className="stroke-ink"
            strokeWidth="0.9"
          />
        ) : null}
        {seenBoth ? (
          <path
            transform={`translate(${String(middle.x)} ${middle.y.toFixed(3)})`}
            d="M-1.1 -1.1 L1.1 1.1 M-1.1 1.1 L1.1 -1.1"
            className="stroke-on-sky"
            strokeWidth="0.4"
          />
        ) : null}
      </VialGlass>
      <g transform={turned ? 'rotate(180)' : undefined}>
        <path
          d="M0 -12.2 L-1.1 -14.6 H1.1 Z"
          className="fill-[var(--lamp)] stroke-ink"
          strokeWidth="0.15"
        />
      </g>
    </svg>
  );
}
