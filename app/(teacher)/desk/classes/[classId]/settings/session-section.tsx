import { ActionForm } from '@/components/desk/action-form';
import type { ClassDetails } from '@/lib/data/classes';
import { chooseIdle } from './actions';
import { SettingsSection } from './settings-section';

/** When students are signed out by themselves. */
export function SessionSection({ details }: { details: ClassDetails }) {
  return (
    <SettingsSection
      id="sessions"
      title="Signing out"
      lead="Short on shared computers, so that nobody works in another’s name. Saved work stays."
    >
      <ActionForm
        idPrefix="idle"
        action={chooseIdle.bind(null, details.id)}
        fields={[
          {
            name: 'idle',
            label: 'Sign students out when nothing happens for',
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
    </SettingsSection>
  );
}

const idleValue = (minutes: number | null): string => {
  if (minutes === null) return 'usual';
  return minutes <= 10 ? '10' : minutes <= 20 ? '20' : '40';
};
