import { zonedTimeText } from '@/components/grading/zoned-time';
import { TableFrame } from '@/components/ui/table-frame';
import type { CoverLinkSummary } from '@/lib/data/cover';
import { ActionForm, type FormActionFunction } from '../action-form';
import { coverEndText } from './cover-end-text';

/** The cover links of the last fortnight and what became of each. */
export function CoverLinksTable({
  links,
  timeZone,
  end,
}: {
  links: readonly CoverLinkSummary[];
  timeZone: string;
  /** null where nothing can be changed. */
  end: FormActionFunction | null;
}) {
  return (
    <TableFrame caption="Cover links of the last fortnight" tall>
      <thead>
        <tr>
          <th scope="col">Made</th>
          <th scope="col">State</th>
          <th scope="col">By</th>
          <th scope="col" className="number">
            Opened
          </th>
        </tr>
      </thead>
      <tbody>
        {links.map((link) => (
          <tr key={link.coverId}>
            <th scope="row">{zonedTimeText(link.madeAt, timeZone)}</th>
            <td className="min-w-40">
              {link.open ? (
                <div className="space-y-2">
                  <p>open until {coverEndText(link.expiresAt, timeZone)}</p>
                  {end === null ? null : (
                    <ActionForm
                      idPrefix={`cover-${link.coverId}`}
                      action={end}
                      fields={[]}
                      hidden={{ coverId: link.coverId }}
                      submitLabel="End it now"
                      busyLabel="Ending"
                    />
                  )}
                </div>
              ) : link.endedAt === null ? (
                `ran out ${zonedTimeText(link.expiresAt, timeZone)}`
              ) : (
                `ended ${zonedTimeText(link.endedAt, timeZone)}`
              )}
            </td>
            <td>{link.madeBy ?? 'a former teacher'}</td>
            <td className="number">
              {link.timesOpened === 0 ? 'not yet' : `${link.timesOpened} ×`}
            </td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
