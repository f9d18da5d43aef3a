import type { Metadata } from 'next';
import { ActionForm } from '@/components/desk/action-form';
import { codeText } from '@/components/desk/class-text';
import { Notice } from '@/components/ui/notice';
import { Panel } from '@/components/ui/panel';
import { buttonLook } from '@/components/ui/button-look';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';
import { chooseIdle, chooseRetention, newCode, removeClass, rename } from './actions';

export const metadata: Metadata = { title: 'Class settings' };

export default async function SettingsPage({ params }: { params: Promise<{ classId: string }> }) {
  const { details, mayTeach, mayOwn } = await classOf(params);
  const { id } = details;
  if (!mayTeach) {
    return (
      <Notice title="Settings are kept by the teachers of the class">
        You have been asked to read along.
      </Notice>
    );
  }
  return (
    <div className="grid items-start gap-6 lg:grid-cols-2">
      <Panel title="Name">
        <ActionForm
          idPrefix="rename"
          action={rename.bind(null, id)}
          fields={[
            { name: 'name', label: 'Name of the class', type: 'text', defaultValue: details.name },
          ]}
          submitLabel="Rename"
          busyLabel="Renaming"
        />
      </Panel>
      <Panel title="Class code">
        <div className="space-y-3">
          <p>
            Now <span className="font-figures text-lg font-semibold">{codeText(details.code)}</span>
            . The code alone opens nothing; change it when it has become too widely known.
          </p>
          <p className="text-sm text-soft">
            A new code works at once and the old one no longer. Printed cards keep their number and
            words; tell the class the new code, or make new cards.
          </p>
          <ActionForm
            idPrefix="code"
            action={newCode.bind(null, id)}
            fields={[]}
            submitLabel="Make a new code"
            busyLabel="Making"
          />
        </div>
      </Panel>
      <Panel title="Signing out">
        <ActionForm
          idPrefix="idle"
          action={chooseIdle.bind(null, id)}
          fields={[
            {
              name: 'idle',
              label: 'Sign students out when nothing happens for',
              hint: 'Short on shared computers, so that nobody works in another’s name. Saved work stays.',
              type: 'select',
              defaultValue: idleValue(details.idleSignOutMinutes),
              options: [
                { value: 'usual', label: '4 hours (own devices)' },
                { value: '40', label: '40 minutes' },
                { value: '20', label: '20 minutes (shared computers)' },
                { value: '10', label: '10 minutes' },
              ],
            },
          ]}
          submitLabel="Save"
        />
      </Panel>
      {mayOwn ? (
        <>
          <Panel title="How long the data is kept">
            <ActionForm
              idPrefix="retention"
              action={chooseRetention.bind(null, id)}
              fields={[
                {
                  name: 'retentionDate',
                  label: 'Keep until',
                  hint: 'From this day on the clean-up command deletes the class with all its work. Usual: end of the school year and 90 days.',
                  type: 'date',
                  defaultValue: details.retentionDate.slice(0, 10),
                },
              ]}
              submitLabel="Save"
            />
          </Panel>
          <Panel title="Delete the class" className="lg:col-span-2">
            <div className="space-y-4">
              <p className="max-w-measure">
                All {details.studentCount} {details.studentCount === 1 ? 'student' : 'students'},{' '}
                {details.assignmentCount}{' '}
                {details.assignmentCount === 1 ? 'assignment' : 'assignments'}, every attempt and
                every mark go, at once and for good. Download the gradebook first if you need the
                marks.
              </p>
              <p>
                <a
                  className={buttonLook('quiet', 'normal')}
                  href={routes.teacher.gradebookFile(id)}
                  download
                >
                  Download the gradebook
                </a>
              </p>
              <ActionForm
                idPrefix="delete"
                action={removeClass.bind(null, id)}
                variant="danger"
                fields={[
                  {
                    name: 'typedName',
                    label: `To delete it, type its name: ${details.name}`,
                    type: 'text',
                  },
                ]}
                submitLabel="Delete the class"
                busyLabel="Deleting"
              />
            </div>
          </Panel>
        </>
      ) : null}
    </div>
  );
}

const idleValue = (minutes: number | null): string => {
  if (minutes === null) return 'usual';
  return minutes <= 10 ? '10' : minutes <= 20 ? '20' : '40';
};
