import { Button } from '@/components/ui/button';
import { labText, templateText } from '@/components/grading/template-text';
import { isWithoutSky } from './draft-input';
import type { AssignmentDraft, KitChoice, SiteChoice } from './assignment-draft';

/** The parts of the form with what is set in each, in a few words. */
export function formParts(
  draft: AssignmentDraft,
  kits: readonly KitChoice[],
  sites: readonly SiteChoice[],
): { id: string; title: string; set: string }[] {
  const onlyTemplate = draft.templates.length === 1 ? draft.templates[0] : undefined;
  const kinds =
    onlyTemplate === undefined
      ? `${draft.templates.length === 0 ? 'no' : draft.templates.length} kinds`
      : templateText(draft.lab, onlyTemplate).name;
  const attempts = draft.attemptsAllowed.trim();
  return [
    { id: 'section-lab', title: 'Lab', set: labText[draft.lab].name },
    ...(isWithoutSky(draft) ? [] : skyParts(draft, kits, sites)),
    {
      id: 'section-tasks',
      ...(isWithoutSky(draft)
        ? { title: 'Lessons', set: onlyTemplate === undefined ? lessonsText(draft) : kinds }
        : { title: 'Tasks', set: `${kinds}, ± ${draft.windowMinutes} minutes` }),
    },
    {
      id: 'section-rules',
      title: 'Rules',
      set: `${attempts === '' ? 'any number of attempts' : `${attempts} ${attempts === '1' ? 'attempt' : 'attempts'}`}, ${dueText(draft)}`,
    },
  ];
}

const lessonsText = ({ templates }: AssignmentDraft): string =>
  templates.length === 0 ? notSet : `${String(templates.length)} lessons`;

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
