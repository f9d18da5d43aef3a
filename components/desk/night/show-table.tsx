import { clockTime } from '@/lib/night/evening';
import type { WorthShowing } from '@/lib/night/worth-showing';
import { spanInWords, whereInWords } from './night-words';

const kindText = {
  moon: 'Moon',
  planet: 'planet',
  cluster: 'star cluster',
  double: 'double star',
} as const;

/** What stands two fists up in the dark part of the evening. */
export function ShowTable({
  toShow,
  kits,
  timeZone,
}: {
  toShow: readonly WorthShowing[];
  /** Names of all telescopes of the evening. */
  kits: readonly string[];
  timeZone: string;
}) {
  return (
    <table className="w-full max-w-[64rem] border-collapse text-sm leading-snug print:max-w-none print:text-xs">
      <caption className="sr-only">What to show, when and with what</caption>
      <thead>
        <tr className="border-t-2 border-b border-t-strong border-b-strong text-soft">
          <th scope="col" className={head}>
            What
          </th>
          <th scope="col" className={head}>
            Best at
          </th>
          <th scope="col" className={`${head} w-1/4`}>
            With
          </th>
        </tr>
      </thead>
      <tbody>
        {toShow.map(({ name, kind, from, until, best, with: shownWith }) => (
          <tr key={name} className="border-b border-line align-top">
            <th scope="row" className="py-1.5 pe-3 text-start font-semibold print:py-0">
              <span className="inline-block first-letter:uppercase">{name}</span>
              {kind === 'moon' ? null : (
                <span className="font-normal text-soft max-sm:block"> {kindText[kind]}</span>
              )}
            </th>
            <td className="py-1.5 pe-3 print:py-0">
              <span className="font-figures font-semibold">
                {clockTime(best.instant, timeZone)}
              </span>
              , {whereInWords(best)}
              <span className="font-figures text-soft max-sm:block">
                {' '}
                {spanInWords(from, until, timeZone)}
              </span>
            </td>
            <td className="py-1.5 print:py-0">{shownWithInWords(shownWith, kits)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const head = 'py-1 pe-3 text-start font-normal print:py-0';

/** "any", "all 25 mm", "Wren and Heron 9 mm, Owl 25 mm" */
function shownWithInWords(shownWith: WorthShowing['with'], kits: readonly string[]): string {
  if (shownWith.length === 0) return 'any';
  const lengths = [...new Set(shownWith.map(({ focalLengthMm }) => focalLengthMm))];
  return lengths
    .map((length) => {
      const own = shownWith.filter(({ focalLengthMm }) => focalLengthMm === length);
      const who =
        own.length === kits.length && own.length > 1
          ? 'all'
          : own.map(({ kit }) => kit).join(' and ');
      return `${who} ${String(length)} mm`;
    })
    .join(', ');
}
