import { TableFrame } from '@/components/ui/table-frame';
import { TextLink } from '@/components/ui/text-link';
import { clockTime } from '@/lib/night/evening';
import type { FortnightEvening } from '@/lib/night/fortnight';
import { dayInWords, noSunsetText, percent } from './night-words';

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
    <TableFrame caption="The coming two weeks" captionHidden tall>
      <thead>
        <tr>
          <th scope="col">Evening</th>
          <th scope="col" className="number">
            Sunset
          </th>
          <th scope="col" className="number">
            Nautical dusk
          </th>
          <th scope="col" className="number">
            Minutes after it
          </th>
          <th scope="col" className="number">
            Without the Moon
          </th>
          <th scope="col" className="number">
            Moon lit
          </th>
        </tr>
      </thead>
      <tbody>
        {evenings.map((evening) => (
          <tr key={evening.localDate}>
            <th scope="row">
              {evening.localDate === planned ? (
                <span aria-current="date">{dayInWords(evening.localDate)}, above</span>
              ) : (
                <TextLink href={hrefFor(evening.localDate)}>
                  {dayInWords(evening.localDate)}
                </TextLink>
              )}
              {evening.localDate === best ? (
                <span className="ms-2 font-semibold text-good">★ darkest</span>
              ) : null}
            </th>
            <td className="number">{sunsetInWords(evening, timeZone)}</td>
            <td className="number">{timeOrNone(evening.darkFrom, timeZone)}</td>
            <td className="number">{evening.darkMinutes}</td>
            <td className="number">{evening.moonlessMinutes}</td>
            <td className="number">{percent(evening.illuminatedFraction)}</td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

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
