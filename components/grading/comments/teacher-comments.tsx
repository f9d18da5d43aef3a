import type { AttemptComment } from '@/lib/data/comments';
import { zonedTimeText } from '../zoned-time';

/** What a teacher wrote beside an attempt: of the whole first, then of each criterion by its name. */
export function TeacherComments({
  comments,
  names,
  timeZone,
}: {
  comments: readonly AttemptComment[];
  /** Of the criteria, in their order. */
  names: readonly { id: string; name: string }[];
  timeZone: string;
}) {
  const ordered = [{ id: '', name: 'On the whole' }, ...names].flatMap(({ id, name }) =>
    comments.filter(({ criterion }) => criterion === id).map((comment) => ({ ...comment, name })),
  );
  return (
    <dl className="max-w-measure space-y-3">
      {ordered.map(({ criterion, name, text, by, changedAt }) => (
        <div key={criterion}>
          <dt className="font-semibold">{name}</dt>
          <dd className="border-s-4 border-accent ps-3">
            <span className="block break-words whitespace-pre-line">{text}</span>
            <span className="block text-sm text-soft">
              {by ?? 'A teacher'}, {zonedTimeText(changedAt, timeZone)}
            </span>
          </dd>
        </div>
      ))}
    </dl>
  );
}
