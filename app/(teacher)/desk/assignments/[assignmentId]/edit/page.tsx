import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AssignmentForm } from '@/components/desk/assignment-form/assignment-form';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import { getViewer } from '@/lib/auth/session';
import { getAssignment } from '@/lib/data/assignments';
import { getClass } from '@/lib/data/classes';
import { routes } from '@/lib/routes';
import { localTimeOfInstant } from '@/lib/sky/local-time';
import { labOptions } from '@/lib/variants/labs';
import {
  duskTonight,
  findPlaces,
  lookUpMoment,
  saveChanged,
} from '../../../assignment-form-actions';
import { hasPassed } from '../../../ends-work';
import { kitChoices, lessonChoices, siteChoices } from '../../../form-choices';
import { knownTimeZones } from '../../../known-time-zones';
import { nextTitles } from '../../../next-title';

export const metadata: Metadata = { title: 'Change an assignment' };

export default async function EditAssignmentPage({
  params,
}: {
  params: Promise<{ assignmentId: string }>;
}) {
  const { assignmentId } = await params;
  const viewer = await getViewer();
  const assignment = await getAssignment(viewer, assignmentId);
  if (assignment === null || !assignment.canEdit) notFound();
  const details = await getClass(viewer, assignment.classId);
  if (details === null) notFound();
  const { id, policy, dueTimeZone, attemptsUnderWay, version } = assignment;
  return (
    <>
      <PageHeader
        title={`Change “${assignment.title}”`}
        crumbs={[
          { label: 'Desk', href: routes.teacher.desk() },
          { label: assignment.title, href: routes.teacher.assignment(id) },
        ]}
      />
      <div className="space-y-6">
        {assignment.state === 'published' ? (
          <Notice
            tone="caution"
            title={
              attemptsUnderWay === 0
                ? 'It is published: changes hold for attempts that start from now on'
                : `${attemptsUnderWay} ${attemptsUnderWay === 1 ? 'attempt is' : 'attempts are'} under way and ${attemptsUnderWay === 1 ? 'stays' : 'stay'} as ${attemptsUnderWay === 1 ? 'it is' : 'they are'}`
            }
          >
            <p>
              An attempt keeps the sky and the rules it started with. Changes hold for attempts that
              start afterwards; marks already given do not move.
            </p>
          </Notice>
        ) : null}
        <AssignmentForm
          source={{
            ...assignment,
            ...placeOf(assignment),
            dueLocalTime:
              policy.dueAt === null ? null : localTimeOfInstant(policy.dueAt, dueTimeZone),
          }}
          dueIsOver={policy.dueAt !== null && hasPassed(policy.dueAt, new Date())}
          kits={kitChoices()}
          sites={siteChoices()}
          zones={knownTimeZones()}
          lessons={await lessonChoices()}
          titles={nextTitles([])}
          givenTo={{ className: details.name, studentCount: details.studentCount }}
          saveLabel="Save and see the answer key"
          actions={{
            searchPlaces: findPlaces,
            lookUpMoment,
            duskTonight,
            save: saveChanged.bind(null, id, version),
          }}
        />
      </div>
    </>
  );
}

/** Of a task without a sky the stored evening stands for nothing: its fields start empty. */
const placeOf = ({
  parts,
  placeName,
  scenario,
}: Pick<
  NonNullable<Awaited<ReturnType<typeof getAssignment>>>,
  'parts' | 'placeName' | 'scenario'
>) =>
  parts.every(({ lab }) => labOptions[lab].withoutSky === true)
    ? { placeIsSet: false, placeName: '', scenario: { ...scenario, localTime: '' } }
    : { placeIsSet: true, placeName, scenario };
