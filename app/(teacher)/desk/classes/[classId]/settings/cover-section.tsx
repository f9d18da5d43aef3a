import { CoverLinkMaker } from '@/components/desk/people/cover-link-maker';
import { CoverLinksTable } from '@/components/desk/people/cover-links-table';
import { TextLink } from '@/components/ui/text-link';
import type { ClassDetails } from '@/lib/data/classes';
import type { CoverLinkSummary } from '@/lib/data/cover';
import { routes } from '@/lib/routes';
import { endCover, makeCoverLink } from './cover-actions';
import { SettingsSection } from './settings-section';

/** A substitute's way in, for one day. */
export function CoverSection({
  details,
  links,
}: {
  details: ClassDetails;
  links: readonly CoverLinkSummary[];
}) {
  return (
    <SettingsSection
      id="cover"
      title="Cover"
      lead="For a substitute without an account: a link that opens this class alone, until the end of today on its clock. They follow the lesson, read what was set, and can let in a student whose card is lost. No accommodations, no files, no settings."
    >
      <p>
        New words on the screen for one student are yours to make too:{' '}
        <TextLink href={routes.teacher.classLetIn(details.id)}>let a student in</TextLink>.
      </p>
      <CoverLinkMaker make={makeCoverLink.bind(null, details.id)} />
      {links.length === 0 ? null : (
        <CoverLinksTable
          links={links}
          timeZone={details.timeZone}
          end={endCover.bind(null, details.id)}
        />
      )}
    </SettingsSection>
  );
}
