import { TextLink } from '@/components/ui/text-link';
import { clockTime } from '@/lib/night/evening';
import type { FortnightEvening } from '@/lib/night/fortnight';
import { dayInWords, hoursAndMinutes, noSunsetText, percent } from './night-words';

type FortnightTableProps = {
  evenings: readonly FortnightEvening[];
  best: string | null;
  planned: string;
  timeZone: string;
  /** The plan of that evening. */
  hrefFor: (localDate: string) => string;
};

/** Two weeks of evenings by Sun and Moon. */
export function FortnightTable({
  evenings,
  best,
  planned,
  timeZone,
  hrefFor,
}: FortnightTableProps) {
  return (
    <table className="w-full border-collapse text-sm leading-snug">
      <caption className="sr-only">Sun and Moon, evening by evening</caption>
      <thead>
        <tr className="border-t-2 border-b border-t-strong border-b-strong text-soft">
          <th scope="col" className={`${cell} text-start font-normal`}>
            Evening
          </th>
          <th scope="col" className={`${figure} font-normal ${wide}`}>
            Sunset
          </th>
          <th scope="col" className={`${figure} font-normal`}>
            Dark from
          </th>
          <th scope="col" className={`${figure} font-normal`}>
            Dark
          </th>
          <th scope="col" className={`${figure} font-normal`}>
            No Moon
          </th>
          <th scope="col" className={`${figure} font-normal`}>
            Moon lit
          </th>
        </tr>
      </thead>
      <tbody>
        {evenings.map((evening) => (
          <tr key={evening.localDate} className="border-b border-line">
            <th scope="row" className={`${cell} text-start font-semibold`}>
              {evening.localDate === planned ? (
                <span aria-current="date">{dayInWords(evening.localDate)}, above</span>
              ) : (
                <TextLink href={hrefFor(evening.localDate)}>
                  {dayInWords(evening.localDate)}
                </TextLink>
              )}
              {evening.localDate === best ? (
                <span className="font-semibold text-good max-sm:block sm:ms-2">★ darkest</span>
              ) : null}
            </th>
            <td className={`${figure} ${wide}`}>{sunsetInWords(evening, timeZone)}</td>
            <td className={figure}>{timeOrNone(evening.darkFrom, timeZone)}</td>
            <td className={figure}>{hoursAndMinutes(evening.darkMinutes)}</td>
            <td className={figure}>{hoursAndMinutes(evening.moonlessMinutes)}</td>
            <td className={figure}>{percent(evening.illuminatedFraction)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** A phone is too narrow for what an almanac tells too. */
const wide = 'max-sm:hidden';
const cell = 'py-1.5 pe-2 align-top';
const figure = 'py-1.5 ps-2 text-end align-top font-figures whitespace-nowrap';

const sunsetInWords = (
  { sunset, noSunset }: Pick<FortnightEvening, 'sunset' | 'noSunset'>,
  timeZone: string,
): string =>
  sunset === null
    ? noSunset === null
      ? '–'
      : noSunsetText[noSunset]
    : clockTime(sunset, timeZone);

const timeOrNone = (instant: string | null, timeZone: string): string =>
  instant === null ? '–' : clockTime(instant, timeZone);
