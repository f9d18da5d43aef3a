import { Button } from '@/components/ui/button';
import { lessonName } from '@/lib/wording/lesson-name';
import { givenText } from '../given-text';
import { isWithoutSky } from './draft-input';
import { partDraftName, partDraftSettings } from './part-words';
import { attemptsWords, horizonWords, kitWords, placeWords, skyWords } from './set-words';
import type { LessonChoice } from './lessons-section';
import type { AssignmentDraft, KitChoice, SiteChoice } from './assignment-draft';

/** The parts of the form with what is set in each, in a few words. */
export function formParts(
  draft: AssignmentDraft,
  kits: readonly KitChoice[],
  sites: readonly SiteChoice[],
): { id: string; title: string; set: string }[] {
  const { lessons } = draft;
  return [
    { id: 'section-parts', title: 'What is marked', set: partsText(draft) },
    {
      id: 'section-lessons',
      title: 'To read',
      set: lessons.length === 0 ? 'nothing' : lessons.map(lessonName).join(' · '),
    },
    ...(isWithoutSky(draft) ? [] : skyParts(draft, kits, sites)),
    {
      id: 'section-rules',
      title: 'Rules',
      set: `${attemptsWords(draft)}, ${dueText(draft)}`,
    },
  ];
}

function partsText({ parts }: AssignmentDraft): string {
  const [only, ...more] = parts;
  if (only === undefined) return 'nothing yet';
  return more.length === 0
    ? `${partDraftName(only)}: ${partDraftSettings(only)}`
    : parts.map(partDraftName).join(' · ');
}

function skyParts(
  draft: AssignmentDraft,
  kits: readonly KitChoice[],
  sites: readonly SiteChoice[],
): { id: string; title: string; set: string }[] {
  return [
    { id: 'section-place', title: 'Place', set: placeWords(draft) },
    { id: 'section-time', title: 'Time', set: timeText(draft.date, draft.time) ?? 'not set yet' },
    { id: 'section-horizon', title: 'Horizon', set: horizonWords(draft, sites) },
    { id: 'section-kit', title: 'Telescope', set: kitWords(draft, kits) },
    { id: 'section-sky', title: 'Sky', set: skyWords(draft) },
  ];
}

/** "5 Dec 2026, 19:30", as it was typed; null while nothing is. */
function timeText(date: string, time: string): string | null {
  const day =
    date === ''
      ? ''
      : new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeZone: 'UTC' }).format(
          new Date(`${date}T00:00Z`),
        );
  const parts = [day, time].filter((part) => part !== '');
  return parts.length === 0 ? null : parts.join(', ');
}

const dueTime = (draft: AssignmentDraft): string | null => timeText(draft.dueDate, draft.dueTime);

function dueText(draft: AssignmentDraft): string {
  const due = dueTime(draft);
  return due === null ? 'no due time' : `due ${due}`;
}

/** What the form as it stands would give, to whom and until when. */
export function draftGivenText(
  draft: AssignmentDraft,
  { className, studentCount }: ClassChoice,
  lessons: readonly LessonChoice[],
): string {
  const due = dueTime(draft);
  return givenText({
    parts: draft.parts.map(partDraftName),
    lessons: lessons.filter(({ slug }) => draft.lessons.includes(slug)).map(({ title }) => title),
    className,
    studentCount,
    due: due === null ? null : `${due} (${draft.dueTimeZone})`,
    attempts: attemptsWords(draft),
  });
}

/** The class that is given the assignment. */
export type ClassChoice = { className: string; studentCount: number };

/** Who follows a link to a part wants to see it. */
function unfold(id: string): void {
  const fold = document.getElementById(id)?.closest('details');
  if (fold) fold.open = true;
}

/** Beside a wide form: where everything is, what is set, and Save. On a phone there is no beside. */
export function FormPartsList({
  parts,
  saving,
}: {
  parts: ReturnType<typeof formParts>;
  saving: boolean;
}) {
  return (
    <div className="hidden min-[1100px]:order-last min-[1100px]:block">
      <nav
        aria-label="Parts of the form"
        className="sticky top-4 max-h-[calc(100dvh-2rem)] overflow-y-auto border-s border-line ps-5"
      >
        <ul className="space-y-2">
          {parts.map(({ id, title, set }) => (
            <li key={id} className="leading-snug">
              <a href={`#${id}`} className="link font-semibold" onClick={() => unfold(id)}>
                {title}
              </a>
              <span className="block text-sm text-soft">{set}</span>
            </li>
          ))}
        </ul>
        <div className="mt-4">
          <Button type="submit" variant="primary" busy={saving}>
            Save
          </Button>
        </div>
      </nav>
    </div>
  );
}
