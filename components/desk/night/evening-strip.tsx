import { clockTime, type Evening } from '@/lib/night/evening';

const width = 720;
const margin = 12;

/** The evening from sunset to packing up: how dark it is, when the Moon is up, when one can begin. */
export function EveningStrip({
  evening,
  twoStarsFrom,
  timeZone,
}: {
  evening: Evening;
  twoStarsFrom: string | null;
  timeZone: string;
}) {
  const [start, end] = [Date.parse(evening.from), Date.parse(evening.to)];
  const x = (instant: string): number => {
    const share = (Date.parse(instant) - start) / (end - start);
    return margin + Math.min(1, Math.max(0, share)) * (width - 2 * margin);
  };
  const { civilDusk, nauticalDusk, astronomicalDusk } = evening.times;
  const bands = [
    { from: evening.from, look: 'fill-sky-glow', name: 'bright twilight' },
    { from: civilDusk, look: 'fill-sky-low', name: 'twilight' },
    { from: nauticalDusk, look: 'fill-sky', name: 'nearly dark' },
    { from: astronomicalDusk, look: 'fill-land', name: 'Sun 18° down' },
  ].filter(
    (band): band is typeof band & { from: string } => band.from !== null && band.from < evening.to,
  );
  return (
    <svg
      viewBox={`0 0 ${String(width)} 92`}
      role="img"
      aria-label={stripInWords(evening, twoStarsFrom, timeZone)}
      className="block w-full max-w-[48rem] min-w-[32rem]"
    >
      {bands.map(({ from, look, name }, index) => {
        const left = x(from);
        const right = x(bands[index + 1]?.from ?? evening.to);
        return (
          <g key={name}>
            <rect x={left} y="20" width={Math.max(0, right - left)} height="30" className={look} />
            <text x={left} y="66" className="fill-soft text-[12px]">
              {right - left > 100 ? name : ''}
            </text>
          </g>
        );
      })}
      {evening.moon.up.map(({ from, to }) => (
        <rect
          key={from}
          x={x(from)}
          y="38"
          width={Math.max(2, x(to) - x(from))}
          height="6"
          rx="3"
          className="fill-on-sky"
        />
      ))}
      {twoStarsFrom === null ? null : (
        <g>
          <path d={`M${String(x(twoStarsFrom))} 16V54`} className="stroke-ink" strokeWidth="2" />
          <text
            x={x(twoStarsFrom)}
            y="12"
            textAnchor="middle"
            className="fill-ink text-[12px] font-semibold"
          >
            begin {clockTime(twoStarsFrom, timeZone)}
          </text>
        </g>
      )}
      <text x={margin} y="84" className="fill-ink text-[12px]">
        {clockTime(evening.from, timeZone)}
      </text>
      <text x={width - margin} y="84" textAnchor="end" className="fill-ink text-[12px]">
        {clockTime(evening.to, timeZone)} pack up
      </text>
    </svg>
  );
}

function stripInWords(evening: Evening, twoStarsFrom: string | null, timeZone: string): string {
  const { nauticalDusk, sunset } = evening.times;
  const at = (instant: string) => clockTime(instant, timeZone);
  const moon = evening.moon.up.map(({ from, to }) => `${at(from)} to ${at(to)}`);
  return [
    `From ${sunset === null ? 'noon' : 'sunset'} at ${at(evening.from)} to packing up at ${at(evening.to)}.`,
    nauticalDusk === null || nauticalDusk > evening.to
      ? 'It does not get dark.'
      : `Dark from ${at(nauticalDusk)}.`,
    moon.length === 0 ? 'The Moon is down.' : `The Moon is up from ${moon.join(' and from ')}.`,
    twoStarsFrom === null ? '' : `Aligning can begin at ${at(twoStarsFrom)}.`,
  ].join(' ');
}
