import type { Metadata } from 'next';
import { ActionForm } from '@/components/desk/action-form';
import { PageHeader } from '@/components/ui/page-header';
import { routes } from '@/lib/routes';
import { knownTimeZones } from '../../known-time-zones';
import { makeClass } from './actions';

export const metadata: Metadata = { title: 'New class' };

export default function NewClassPage() {
  return (
    <>
      <PageHeader title="New class" crumbs={[{ label: 'Desk', href: routes.teacher.desk() }]} />
      <ActionForm
        idPrefix="class"
        action={makeClass}
        variant="primary"
        submitLabel="Create the class"
        busyLabel="Creating"
        fields={[
          { name: 'name', label: 'Name', type: 'text', hint: 'Printed on the sign-in cards.' },
          {
            name: 'timeZone',
            label: 'Time zone',
            type: 'text',
            hint: 'Due times are on this clock. A city stands for its zone, such as Europe/Oslo.',
            suggestions: knownTimeZones(),
            defaultValue: Intl.DateTimeFormat().resolvedOptions().timeZone,
          },
        ]}
      />
    </>
  );
}
