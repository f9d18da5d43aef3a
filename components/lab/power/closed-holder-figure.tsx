import { darkPaint, fittingPaint, mountPaint, tubePaint } from '@/components/telescope/paint';
import type { PowerBench } from '@/lib/power/power-bench';
import { bayAt, contactRoom, holderBox, studAt, type BenchLayout } from './bench-layout';
import { bayName, studName } from './power-words';
import { SvgButton } from './svg-button';

type ClosedHolderFigureProps = {
  layout: BenchLayout;
  bays: PowerBench['bays'];
  probes: { red: number | null; black: number | null };
  onStud: (stud: number) => void;
  onTurn: (bay: number) => void;
};

/** The holder under its lid: a stud between every two bays for the meter, and a window to turn each cell by. */
export function ClosedHolderFigure(props: ClosedHolderFigureProps) {
  const { layout, bays, probes } = props;
  const { bayWidth, cellHeight } = layout;
  const last = bays.length;
  return (
    <g>
      <rect {...holderBox(layout, last)} rx="8" {...mountPaint} />
      {bays.map((_, bay) => {
        const { x, y } = bayAt(layout, bay);
        const top = y + 42;
        const height = cellHeight + 2 * contactRoom - 16;
        return (
          // Bays are known by their place.
          <SvgButton
            key={bay}
            label={`Turn round the cell in ${bayName(bay)}`}
            hit={{ x, y: top, width: bayWidth, height }}
            onPress={() => {
              props.onTurn(bay);
            }}
          >
            <rect x={x + 4} y={top} width={bayWidth - 8} height={height} rx="5" {...darkPaint} />
            <text
              x={x + bayWidth / 2}
              y={top + 28}
              fontSize="18"
              fontWeight="700"
              textAnchor="middle"
              fill="var(--on-sky)"
            >
              {bay + 1}
            </text>
            <path
              transform={`translate(${String(x + bayWidth / 2)} ${String(top + height - 40)})`}
              d="M-10 4 A11 11 0 1 1 -4 10 M-10 -6 V5 H1"
              fill="none"
              stroke="var(--on-sky-soft)"
              strokeWidth="2"
            />
            <text
              x={x + bayWidth / 2}
              y={top + height - 8}
              fontSize="12"
              textAnchor="middle"
              fill="var(--on-sky-soft)"
            >
              turn
            </text>
          </SvgButton>
        );
      })}
      {Array.from({ length: last + 1 }, (_, stud) => {
        const { x, y } = studAt(layout, stud);
        const probe = probes.red === stud ? 'R' : probes.black === stud ? 'B' : null;
        return (
          <SvgButton
            key={stud}
            label={`Stud ${studName(stud, last)}: ${probes.black === null ? 'put the black probe on it' : 'put the red probe on it'}`}
            hit={{ x: x - bayWidth / 2 + 1, y: y - 20, width: bayWidth - 2, height: 40 }}
            onPress={() => {
              props.onStud(stud);
            }}
          >
            <circle cx={x} cy={y} r="10" {...(probe === null ? fittingPaint : tubePaint)} />
            <text
              x={x}
              y={y + 4.5}
              fontSize="13"
              fontWeight="700"
              textAnchor="middle"
              fill="var(--land-near)"
            >
              {probe ?? stud}
            </text>
          </SvgButton>
        );
      })}
    </g>
  );
}
