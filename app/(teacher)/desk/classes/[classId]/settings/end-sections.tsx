import { ActionForm } from '@/components/desk/action-form';
import { ConfirmAction } from '@/components/desk/confirm-action';
import { zonedDayText } from '@/components/grading/zoned-time';
import { buttonLook } from '@/components/ui/button-look';
import type { ClassDetails } from '@/lib/data/classes';
import { routes } from '@/lib/routes';
import { archive, chooseRetention, removeClass, takeBack } from './actions';
import { SettingsSection } from './settings-section';

export function RetentionSection({ details }: { details: ClassDetails }) {
  const { id, archivedAt, retentionDate, timeZone } = details;
  return (
    <SettingsSection
      id="retention"
      title="How long it is kept"
      lead="From this day on the clean-up command deletes the class with all its work. Usual: the end of the school year and 90 days."
    >
      {archivedAt === null ? (
        <ActionForm
          idPrefix="retention"
          action={chooseRetention.bind(null, id)}
          fields={[
            {
              name: 'retentionDate',
              label: 'Keep until',
              type: 'date',
              defaultValue: retentionDate.slice(0, 10),
            },
          ]}
          submitLabel="Save"
        />
      ) : (
        <p>
          Kept until {zonedDayText(new Date(retentionDate), timeZone)}. Take the class back to
          change the day.
        </p>
      )}
    </SettingsSection>
  );
}

export function ArchiveSection({ details }: { details: ClassDetails }) {
  const { id, name, archivedAt } = details;
  return (
    <SettingsSection
      id="archive"
      title="Archive"
      lead="Puts the class away when its year is over. Everything stays to be read and taken out; nothing changes any more, and its students cannot sign in."
    >
      {archivedAt === null ? (
        <ConfirmAction
          action={archive.bind(null, id)}
          title={`Archive ${name}?`}
          description="Students and substitutes are signed out at once, and nobody changes anything here any more. Nothing is lost: you can take the class back."
          confirmLabel="Archive the class"
          busyLabel="Archiving"
        >
          Archive the class…
        </ConfirmAction>
      ) : (
        <ActionForm
          idPrefix="take-back"
          action={takeBack.bind(null, id)}
          fields={[]}
          variant="primary"
          submitLabel="Take the class back"
          busyLabel="Taking back"
        />
      )}
    </SettingsSection>
  );
}

export function DeleteSection({ details }: { details: ClassDetails }) {
  const { id, name, studentCount, assignmentCount } = details;
  return (
    <SettingsSection
      id="delete"
      title="Delete"
      lead={`All ${studentCount} ${studentCount === 1 ? 'student' : 'students'} and whoever left, ${assignmentCount} ${assignmentCount === 1 ? 'assignment' : 'assignments'}, every attempt and every mark go, at once and for good.`}
    >
      <p>
        Take what you need with you first:{' '}
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
          { name: 'typedName', label: `To delete it, type its name: ${name}`, type: 'text' },
        ]}
        submitLabel="Delete the class"
        busyLabel="Deleting"
      />
    </SettingsSection>
  );
}
