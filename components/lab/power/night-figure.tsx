import type { PowerNight } from '@/lib/power/night';
import { degreesCText, voltsText } from './power-words';

type NightFigureProps = {
  x: number;
  y: number;
  width: number;
  night: PowerNight;
  /** As the learner has worked them out so far; null: not yet. */
  runTimeHours: number | null;
  slewingVolts: number | null;
  /** As they really are, once the work is done. */
  right?: { runTimeHours: number; slewingVolts: number };
};

const rowHeight = 54;

/** The evening as bars: hours wanted and hours foretold, volts needed and volts foretold. */
export function NightFigure(props: NightFigureProps) {
  const { night, width, right } = props;
  const hoursEnd = Math.max(
    night.hours * 1.6,
    (right?.runTimeHours ?? 0) * 1.15,
    Math.min(props.runTimeHours ?? 0, night.hours * 5),
  );
  const hours = (value: number) => Math.min(1, value / hoursEnd) * width;
  const volts = (value: number) => Math.max(0, Math.min(1, value / 13)) * width;
  const hoursText = (value: number) => `${value.toFixed(1)} hours`;
  const rows: BarProps[] = [
    {
      name: `Planned tonight, at ${degreesCText(night.temperatureC)}`,
      long: hours(night.hours),
      text: `${String(night.hours)} hours`,
      look: 'given',
    },
    {
      name: 'How long the cells last, as you have it',
      long: props.runTimeHours === null ? null : hours(props.runTimeHours),
      text: props.runTimeHours === null ? 'not worked out' : hoursText(props.runTimeHours),
      look: 'said',
    },
    ...(right === undefined
      ? []
      : [
          {
            name: 'How long they do last',
            long: hours(right.runTimeHours),
            text: hoursText(right.runTimeHours),
            look: 'right' as const,
          },
        ]),
    {
      name: `Volts while slewing, as you have it (the line: ${voltsText(night.needs.resetBelowV)})`,
      long: props.slewingVolts === null ? null : volts(props.slewingVolts),
      text: props.slewingVolts === null ? 'not worked out' : voltsText(props.slewingVolts),
      look: 'said',
      limit: volts(night.needs.resetBelowV),
    },
    ...(right === undefined
      ? []
      : [
          {
            name: 'Volts while slewing, as they are',
            long: volts(right.slewingVolts),
            text: voltsText(right.slewingVolts),
            look: 'right' as const,
            limit: volts(night.needs.resetBelowV),
          },
        ]),
  ];
  return (
    <g transform={`translate(${String(props.x)} ${String(props.y)})`} aria-hidden="true">
      {rows.map((row, i) => (
        <g key={row.name} transform={`translate(0 ${String(i * rowHeight)})`}>
          <Bar {...row} width={width} />
        </g>
      ))}
    </g>
  );
}

type BarProps = {
  name: string;
  /** Null where there is nothing to show yet. */
  long: number | null;
  text: string;
  look: 'given' | 'said' | 'right';
  /** Where the computer starts afresh. */
  limit?: number;
};

const fills = {
  given: 'var(--on-sky-soft)',
  said: 'var(--sky-lamp)',
  right: 'var(--on-sky)',
} as const;

function Bar({ name, long, text, look, limit, width }: BarProps & { width: number }) {
  return (
    <>
      <text y="14" fontSize="13.5" fill="var(--on-sky)">
        {name}
      </text>
      <rect y="20" width={width} height="20" rx="3" fill="var(--land-near)" />
      {long === null ? null : (
        <rect
          y="20"
          width={Math.max(2, long)}
          height="20"
          rx="3"
          fill={fills[look]}
          style={{ transition: 'width 0.3s' }}
        />
      )}
      {limit === undefined ? null : (
        <path d={`M${String(limit)} 15 V45`} stroke="var(--on-sky)" strokeWidth="3" />
      )}
      <text
        x={long === null || long < 110 ? (long ?? 0) + 8 : long - 8}
        y="35"
        fontSize="13.5"
        fontWeight="700"
        textAnchor={long === null || long < 110 ? 'start' : 'end'}
        fill={long === null || long < 110 ? 'var(--on-sky)' : 'var(--land-near)'}
      >
        {text}
      </text>
    </>
  );
}
