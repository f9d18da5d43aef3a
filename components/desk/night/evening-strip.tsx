import { clockTime, type Evening } from '@/lib/night/evening';

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
  /** How far along the bar, in per cent: it is as wide as the page, its words keep their size. */
  const along = (instant: string): number =>
    100 * Math.min(1, Math.max(0, (Date.parse(instant) - start) / (end - start)));
  const { civilDusk, nauticalDusk, astronomicalDusk } = evening.times;
  const bands = [
    { from: evening.from, look: 'fill-sky-glow print:fill-page', name: 'bright twilight' },
    { from: civilDusk, look: 'fill-sky-low print:fill-sky-glow', name: 'twilight' },
    {
      from: nauticalDusk,
      look: 'fill-sky print:fill-land [[data-theme=after-dark]_&]:fill-land-near',
      name: 'nearly dark',
    },
    {
      from: astronomicalDusk,
      look: 'fill-land print:fill-land-near [[data-theme=after-dark]_&]:fill-sky',
      name: 'Sun 18° down',
    },
  ].filter(
    (band): band is typeof band & { from: string } => band.from !== null && band.from < evening.to,
  );
  return (
    <svg
      role="img"
      aria-label={stripInWords(evening, twoStarsFrom, timeZone)}
      className="block h-[6.2rem] w-full max-w-[48rem] overflow-visible"
    >
      {bands.map(({ from, look, name }, index) => {
        const left = along(from);
        const width = Math.max(0, along(bands[index + 1]?.from ?? evening.to) - left);
        return (
          <g key={name}>
            <rect
              x={percentOf(left)}
              y="1.4rem"
              width={percentOf(width)}
              height="2rem"
              className={`${look} stroke-strong`}
            />
            {width > 30 ? (
              <text x={percentOf(left)} y="4.5rem" className="fill-soft text-xs">
                {name}
              </text>
            ) : null}
          </g>
        );
      })}
      {evening.moon.up.map(({ from, to }) => (
        <rect
          key={from}
          x={percentOf(along(from))}
          y="2.7rem"
          width={percentOf(Math.max(0.5, along(to) - along(from)))}
          height="0.35rem"
          rx="0.17rem"
          className="fill-on-sky"
        />
      ))}
      {twoStarsFrom === null ? null : (
        <Begin at={along(twoStarsFrom)} words={`begin ${clockTime(twoStarsFrom, timeZone)}`} />
      )}
      <text x="0" y="5.8rem" className="fill-ink text-xs">
        {clockTime(evening.from, timeZone)} {evening.times.sunset === null ? 'noon' : 'sunset'}
      </text>
      <text x="100%" y="5.8rem" textAnchor="end" className="fill-ink text-xs">
        {clockTime(evening.to, timeZone)} pack up
      </text>
    </svg>
  );
}

const percentOf = (share: number): string => `${share.toFixed(2)}%`;

/** A mark across the bar; its words stay on the page at either end. */
function Begin({ at, words }: { at: number; words: string }) {
  const anchor = at < 20 ? 'start' : at > 80 ? 'end' : 'middle';
  return (
    <g>
      <line
        x1={percentOf(at)}
        x2={percentOf(at)}
        y1="1.1rem"
        y2="3.7rem"
        className="stroke-ink"
        strokeWidth="2"
      />
      <text
        x={percentOf(at)}
        y="0.85rem"
        textAnchor={anchor}
        className="fill-ink text-xs font-semibold"
      >
        {words}
      </text>
    </g>
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
