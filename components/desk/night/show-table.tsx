import { TableFrame } from '@/components/ui/table-frame';
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
  timeZone,
}: {
  toShow: readonly WorthShowing[];
  timeZone: string;
}) {
  return (
    <TableFrame caption="What to show" captionHidden tall>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">When</th>
          <th scope="col">Best</th>
          <th scope="col">With</th>
        </tr>
      </thead>
      <tbody>
        {toShow.map(({ name, kind, from, until, best, with: shownWith }) => (
          <tr key={name}>
            <th scope="row" className="min-w-36">
              <span className="inline-block first-letter:uppercase">{name}</span>
              <span className="block text-sm font-normal text-soft">{kindText[kind]}</span>
            </th>
            <td className="font-figures">{spanInWords(from, until, timeZone)}</td>
            <td className="min-w-44">
              <span className="font-figures">{clockTime(best.instant, timeZone)}</span>,{' '}
              {whereInWords(best)}
            </td>
            <td className="min-w-36">
              {shownWith.length === 0
                ? 'any'
                : shownWith
                    .map(({ kit, focalLengthMm }) => `${kit} ${String(focalLengthMm)} mm`)
                    .join(', ')}
            </td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
