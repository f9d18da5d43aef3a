import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { z } from 'zod';
import { NoStudentsYet } from '@/components/desk/people/no-students-yet';
import { ActionForm } from '@/components/desk/action-form';
import { AgreementText } from '@/components/desk/sign-off/agreement-text';
import { ReadOnlySheet } from '@/components/desk/sign-off/read-only-sheet';
import { SignOffBoard } from '@/components/desk/sign-off/sign-off-board';
import { LinkButton } from '@/components/ui/link-button';
import { Panel } from '@/components/ui/panel';
import { SunCaution } from '@/components/ui/sun-caution';
import { systemClock } from '@/lib/data/clock';
import { getSignOffSheet } from '@/lib/data/sign-off-sheet';
import { helpWords } from '@/lib/mastery/sign-off';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';
import { chooseSignOffLevel } from './actions';

export const metadata: Metadata = { title: 'Sign-off' };

const querySchema = z.object({ group: z.string().max(64).catch('').default('') });

export default async function SignOffPage({
  params,
  searchParams,
}: {
  params: Promise<{ classId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const { details, viewer } = await classOf(params);
  const { group } = querySchema.parse(await searchParams);
  const sheet = await getSignOffSheet(viewer, details.id);
  if (sheet === null) notFound();
  const { teacherId, needed, agreement } = sheet;
  if (sheet.students.length === 0) {
    return (
      <NoStudentsYet addAt={teacherId === null ? null : routes.teacher.classRoster(details.id)}>
        <p>Once there are students, you note here what you saw each of them do at the telescope.</p>
      </NoStudentsYet>
    );
  }
  const known = sheet.groups.some(({ id }) => id === group) || group === 'none' ? group : '';
  return (
    // The room below is for the bar that tells what was noted.
    <div data-compact-head="" className="space-y-4 pb-20 max-sm:space-y-2">
      {/* On a phone the row of pages above says it, and the grid belongs on the first screen. */}
      <h2 className="max-sm:sr-only text-xl font-semibold">Sign-off at the telescope</h2>
      {teacherId === null ? (
        <ReadOnlySheet
          sheet={sheet}
          teacherId={viewer.kind === 'teacher' ? viewer.teacherId : null}
        />
      ) : (
        <SignOffBoard
          sheet={sheet}
          teacherId={teacherId}
          group={known}
          today={systemClock.now().toISOString()}
        />
      )}
      <p>
        <LinkButton href={routes.teacher.classSignOffForm(details.id)}>Paper form</LinkButton>
      </p>
      <div className="grid items-start gap-4 lg:grid-cols-2">
        <Panel title="What signs off">
          <div className="space-y-3">
            <p className="max-w-measure">
              A skill is signed off when you have seen it on two evenings at level {needed} or
              above, with no gate failed. A gate that failed is “not yet”, whatever the level.
            </p>
            {teacherId === null ? null : (
              <ActionForm
                idPrefix="needed"
                action={chooseSignOffLevel.bind(null, details.id)}
                fields={[
                  {
                    name: 'level',
                    label: 'Level needed',
                    type: 'select',
                    defaultValue: String(needed),
                    options: [
                      { value: '3', label: `3 ${helpWords[3]}` },
                      { value: '4', label: `4 ${helpWords[4]}` },
                    ],
                  },
                ]}
                submitLabel="Save"
              />
            )}
          </div>
        </Panel>
        <Panel title="Two assessors">
          <AgreementText agreement={agreement} />
        </Panel>
      </div>
      <SunCaution />
    </div>
  );
}
