import { Button } from '@/components/ui/button';
import { lessonName } from '@/components/questions/lesson-name';
import { isWithoutSky } from './draft-input';
import { partDraftName, partDraftSettings } from './part-words';
import type { AssignmentDraft, KitChoice, SiteChoice } from './assignment-draft';

/** The parts of the form with what is set in each, in a few words. */
export function formParts(
  draft: AssignmentDraft,
  kits: readonly KitChoice[],
  sites: readonly SiteChoice[],
): { id: string; title: string; set: string }[] {
  const attempts = draft.attemptsAllowed.trim();
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
      set: `${attempts === '' ? 'any number of attempts' : `${attempts} ${attempts === '1' ? 'attempt' : 'attempts'}`}, ${dueText(draft)}`,
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
  const kit = kits.find(({ id }) => id === draft.kitId);
  const site = sites.find(({ id }) => id === draft.siteId);
  return [
    { id: 'section-place', title: 'Place', set: draft.placeName.trim() || notSet },
    { id: 'section-time', title: 'Time', set: timeText(draft.date, draft.time) ?? notSet },
    {
      id: 'section-horizon',
      title: 'Horizon',
      set: site?.name ?? `own skyline, ${draft.horizon.points.length} points`,
    },
    { id: 'section-kit', title: 'Telescope', set: kit?.name ?? 'own numbers' },
    { id: 'section-sky', title: 'Sky', set: `to magnitude ${draft.sky.darkestLimitMagnitude}` },
  ];
}

const notSet = 'not set yet';

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

function dueText(draft: AssignmentDraft): string {
  const due = timeText(draft.dueDate, draft.dueTime);
  return due === null ? 'no due time' : `due ${due}`;
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
              <a href={`#${id}`} className="link font-semibold">
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
