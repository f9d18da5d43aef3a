import { ActionForm } from '@/components/desk/action-form';
import { codeText } from '@/components/desk/class-text';
import type { ClassDetails } from '@/lib/data/classes';
import { newCode, rename } from './actions';
import { SettingsSection } from './settings-section';

/** What the class is called and the code on its cards. */
export function ClassSection({ details }: { details: ClassDetails }) {
  const { id, name, code, timeZone } = details;
  return (
    <SettingsSection
      id="class"
      title="The class"
      lead={`Due times are on the clock of ${timeZone}; that is set when a class is made.`}
    >
      <ActionForm
        idPrefix="rename"
        action={rename.bind(null, id)}
        fields={[{ name: 'name', label: 'Name of the class', type: 'text', defaultValue: name }]}
        submitLabel="Rename"
        busyLabel="Renaming"
      />
      <div className="max-w-measure space-y-3">
        <h3 className="text-lg font-semibold">
          Class code <span className="font-figures">{codeText(code)}</span>
        </h3>
        <p className="text-sm text-soft">
          The code alone opens nothing; change it when it has become too widely known. A new code
          works at once and the old one no longer. Printed cards keep their number and words; tell
          the class the new code, or make new cards.
        </p>
        <ActionForm
          idPrefix="code"
          action={newCode.bind(null, id)}
          fields={[]}
          submitLabel="Make a new code"
          busyLabel="Making"
        />
      </div>
    </SettingsSection>
  );
}
