import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AssignmentForm } from '@/components/desk/assignment-form/assignment-form';
import type { DraftSource } from '@/components/desk/assignment-form/assignment-draft';
import { Notice } from '@/components/ui/notice';
import { SunCaution } from '@/components/ui/sun-caution';
import { defaultAssignmentPolicy } from '@/lib/data/assignment-input';
import { getAssignment, listAssignments } from '@/lib/data/assignments';
import type { LessonSlug } from '@/lib/course/lessons';
import { scenarioSchema } from '@/lib/pointing/scenario';
import { labOptions } from '@/lib/variants/labs';
import { pairTemplates } from '@/lib/variants/pair-variant';
import {
  duskTonight,
  findPlaces,
  lookUpMoment,
  saveNew,
} from '../../../../assignment-form-actions';
import { kitChoices, lessonChoices, siteChoices } from '../../../../form-choices';
import { knownTimeZones } from '../../../../known-time-zones';
import { nextTitles } from '../../../../next-title';
import { classOf } from '../../class-of';

export const metadata: Metadata = { title: 'New assignment' };

export default async function NewAssignmentPage({
  params,
  searchParams,
}: {
  params: Promise<{ classId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const { details, viewer, mayTeach } = await classOf(params);
  if (!mayTeach) notFound();
  const kits = kitChoices();
  const sites = siteChoices();
  // Place, horizon and telescope seldom change from one task to the next.
  const earlier = (await listAssignments(viewer, details.id)) ?? [];
  const last = earlier.findLast(({ labs }) =>
    labs.some((lab) => labOptions[lab].withoutSky !== true),
  );
  const before = last === undefined ? null : await getAssignment(viewer, last.id);
  const source = before === null ? firstSource(details.timeZone, kits, sites) : nextSource(before);
  const titles = nextTitles(earlier);
  const lessons = await lessonChoices();
  // "Assign this lesson", on a lesson's page: its questions, with the lesson beside them.
  const { lesson } = await searchParams;
  const assigned = lessons.find(({ slug }) => slug === lesson);
  const start =
    assigned === undefined
      ? { ...source, title: titles[source.parts[0]?.lab ?? 'pick-the-pair'] }
      : { ...source, ...questionsOn(assigned) };
  return (
    <div className="space-y-6">
      <div>
        <h2 className="text-xl font-semibold">New assignment</h2>
        <p className="mt-1 max-w-measure text-soft">
          It is saved as a draft. You see the answer key next, and publish when you are content.
        </p>
      </div>
      {before === null || assigned !== undefined ? null : (
        <Notice title={`Place, horizon, telescope and rules are taken over from “${before.title}”`}>
          <p>Change what differs; the date and the due time start empty.</p>
        </Notice>
      )}
      {assigned === undefined ? <SunCaution /> : null}
      <AssignmentForm
        source={start}
        kits={kits}
        sites={sites}
        zones={knownTimeZones()}
        lessons={lessons}
        titles={titles}
        givenTo={{ className: details.name, studentCount: details.studentCount }}
        withPresets
        saveLabel="Save the draft and see the answer key"
        actions={{
          searchPlaces: findPlaces,
          lookUpMoment,
          duskTonight,
          save: saveNew.bind(null, details.id),
        }}
      />
    </div>
  );
}

const questionsOn = ({ slug, title }: { slug: LessonSlug; title: string }) => ({
  title: `Questions: ${title}`,
  parts: [
    {
      lab: 'lesson-questions' as const,
      templates: [slug],
      windowMinutes: 0,
      minutesAllowed: null,
      weight: 1,
    },
  ],
  lessons: [slug],
});

type Before = NonNullable<Awaited<ReturnType<typeof getAssignment>>>;

const nextSource = (before: Before): Omit<DraftSource, 'title'> => ({
  placeIsSet: true,
  placeName: before.placeName,
  scenario: { ...before.scenario, localTime: '', clouds: [] },
  kitId: before.kitId,
  siteId: before.siteId,
  // A new assignment has parts of its own, like those of the last one.
  parts: before.parts.map(({ lab, templates, windowMinutes, minutesAllowed, weight }) => ({
    lab,
    templates,
    windowMinutes,
    minutesAllowed,
    weight,
  })),
  lessons: before.lessons,
  weight: before.weight,
  needsSignOff: before.needsSignOff,
  policy: before.policy,
  dueLocalTime: null,
  dueTimeZone: before.dueTimeZone,
});

function firstSource(
  timeZone: string,
  kits: ReturnType<typeof kitChoices>,
  sites: ReturnType<typeof siteChoices>,
): Omit<DraftSource, 'title'> {
  const kit = kits[0];
  const site = sites[0];
  const eyepiece = kit?.eyepieces.find((piece) => piece.id === kit.observingEyepieceId);
  if (kit === undefined || site === undefined || eyepiece === undefined) {
    throw new Error('content/kits and content/sites each hold at least one entry');
  }
  return {
    placeIsSet: false,
    placeName: '',
    scenario: scenarioSchema.parse({
      place: { latitudeDeg: 0, longitudeDeg: 0 },
      horizon: site.horizon,
      localTime: '',
      timeZone,
      telescope: kit.telescope,
      eyepiece: {
        focalLengthMm: eyepiece.focalLengthMm,
        apparentFieldDeg: eyepiece.apparentFieldDeg,
      },
    }),
    kitId: kit.id,
    siteId: site.id,
    parts: [
      {
        lab: 'pick-the-pair',
        templates: pairTemplates,
        windowMinutes: 40,
        minutesAllowed: null,
        weight: 1,
      },
    ],
    lessons: ['choosing-alignment-stars'],
    weight: 1,
    needsSignOff: false,
    policy: defaultAssignmentPolicy,
    dueLocalTime: null,
    dueTimeZone: timeZone,
  };
}
