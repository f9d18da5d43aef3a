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
          <th scope="col">Kind</th>
          <th scope="col">When</th>
          <th scope="col">Best</th>
          <th scope="col">With</th>
        </tr>
      </thead>
      <tbody>
        {toShow.map(({ name, kind, from, until, best, with: shownWith }) => (
          <tr key={name}>
            <th scope="row" className="first-letter:uppercase">
              {name}
            </th>
            <td>{kindText[kind]}</td>
            <td className="font-figures">{spanInWords(from, until, timeZone)}</td>
            <td>
              <span className="font-figures">{clockTime(best.instant, timeZone)}</span>,{' '}
              {whereInWords(best)}
            </td>
            <td>
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
