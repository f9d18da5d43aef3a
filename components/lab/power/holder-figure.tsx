import { capitalised } from '@/lib/wording/capital';
import { darkPaint, mountPaint } from '@/components/telescope/paint';
import type { PowerBench } from '@/lib/power/power-bench';
import { bayAt, contactRoom, holderBox, liftHeight, type BenchLayout } from './bench-layout';
import { BayContacts } from './bay-contacts';
import { CellFigure } from './cell-figure';
import { bayName, cellText, springAt, ways } from './power-words';
import { SvgButton } from './svg-button';

type HolderFigureProps = {
  layout: BenchLayout;
  bays: PowerBench['bays'];
  /** A cell in the hand, by its tag: bays that are free then show it. */
  held: string | null;
  onBay: (bay: number) => void;
  /** Left out where nothing is to be moved. */
  onLift: ((bay: number) => void) | null;
};

/** The open holder: eight bays with a spring at one end, cells in them, and a strip to lift each by. */
export function HolderFigure({ layout, bays, held, onBay, onLift }: HolderFigureProps) {
  const { bayWidth, cellHeight } = layout;
  const slot = { width: bayWidth - 6, height: cellHeight + 2 * contactRoom };
  return (
    <g>
      <rect {...holderBox(layout, bays.length)} rx="8" {...mountPaint} />
      {bays.map(({ springEnd, put }, bay) => {
        const { x, y } = bayAt(layout, bay);
        const is = put === null ? 'empty' : `${cellText(put.cell)}, ${ways[put.plusEnd]}`;
        const does =
          put !== null
            ? 'Turn it round.'
            : held === null
              ? 'Take a cell up first.'
              : `Put cell ${held} in.`;
        return (
          // Bays are known by their place.
          <g key={bay} transform={`translate(${String(x + 3)} ${String(y)})`}>
            <SvgButton
              label={`${capitalised(bayName(bay))}, ${springAt(springEnd)}: ${is}. ${does}`}
              hit={{ x: -3, y: 0, width: bayWidth, height: slot.height }}
              onPress={() => {
                onBay(bay);
              }}
            >
              <rect {...slot} rx="3" {...darkPaint} />
              <BayContacts springTop={springEnd === 'top'} {...slot} tight={put !== null} />
              {put === null ? (
                <EmptyMark {...slot} ready={held !== null} />
              ) : (
                <g transform={`translate(2 ${String(contactRoom)})`}>
                  <CellFigure
                    cell={put.cell}
                    plusEnd={put.plusEnd}
                    width={slot.width - 4}
                    height={cellHeight}
                  />
                </g>
              )}
            </SvgButton>
            <LiftStrip {...slot} bay={bay} isEmpty={put === null} onLift={onLift} />
          </g>
        );
      })}
    </g>
  );
}

type SlotProps = { width: number; height: number };

type LiftStripProps = SlotProps & {
  bay: number;
  isEmpty: boolean;
  onLift: HolderFigureProps['onLift'];
};

/** Stays where it is when the bay is emptied by it, so that the keyboard's place is kept. */
function LiftStrip({ width, height, bay, isEmpty, onLift }: LiftStripProps) {
  const words = (
    <text
      x={width / 2}
      y={height + 22}
      fontSize="13"
      textAnchor="middle"
      fill={isEmpty ? 'var(--on-sky-soft)' : 'var(--on-sky)'}
      aria-hidden="true"
    >
      {bay + 1}
      {isEmpty || onLift === null ? '' : ' out'}
    </text>
  );
  if (onLift === null) return words;
  return (
    <SvgButton
      label={
        isEmpty ? `Nothing to take out of ${bayName(bay)}` : `Take the cell out of ${bayName(bay)}`
      }
      hit={{ x: -3, y: height, width: width + 6, height: liftHeight + 8 }}
      onPress={() => {
        onLift(bay);
      }}
    >
      {isEmpty ? null : (
        <rect
          x="1"
          y={height + 4}
          width={width - 2}
          height={liftHeight - 6}
          rx="4"
          fill="var(--land-near)"
          stroke="var(--sky-line)"
          strokeWidth="1.2"
        />
      )}
      {words}
    </SvgButton>
  );
}

function EmptyMark({ width, height, ready }: SlotProps & { ready: boolean }) {
  return (
    <rect
      x="5"
      y={contactRoom * 2}
      width={width - 10}
      height={height - contactRoom * 4}
      rx="4"
      fill="none"
      stroke={ready ? 'var(--sky-lamp)' : 'var(--sky-line)'}
      strokeWidth={ready ? 2.5 : 1}
      strokeDasharray="5 5"
    />
  );
}
