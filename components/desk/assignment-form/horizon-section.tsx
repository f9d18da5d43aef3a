'use client';

import { RadioGroup } from '@/components/ui/radio-group';
import { FieldError } from '@/components/ui/field';
import { HorizonEditor } from '../horizon-editor/horizon-editor';
import { changeHorizon, horizonHistory } from '../horizon-editor/horizon-history';
import type { AssignmentDraft, SiteChoice } from './assignment-draft';
import { readNumber } from '../read-number';
import { Fold } from './fold';
import type { SectionProps } from './section';
import { horizonWords } from './set-words';

export function HorizonSection({
  draft,
  change,
  problemAt,
  sites,
}: SectionProps<AssignmentDraft> & { sites: readonly SiteChoice[] }) {
  const problem = problemAt('scenario.horizon');
  const limit = (text: string, fallback: number): number => {
    const value = readNumber(text);
    return typeof value === 'number' ? value : fallback;
  };
  return (
    <Fold
      asSection
      id="section-horizon"
      title="Horizon"
      now={horizonWords(draft, sites)}
      hasProblem={problem !== null}
    >
      <p className="max-w-measure text-soft">
        What stands in the way: roofs, trees, hills. Take one of the built-in sites, or draw your
        own. A horizon drawn at a home is seen by the class, and by nobody else.
      </p>
      <div id="scenario.horizon" tabIndex={-1}>
        <RadioGroup
          legend="Observing site"
          name="site"
          value={draft.siteId ?? 'own'}
          options={[
            ...sites.map((site) => ({ value: site.id, label: site.name })),
            {
              value: 'own',
              label: 'My own skyline',
              hint: 'Starts from the one chosen last; any change to a site makes it yours.',
            },
          ]}
          onValueChange={(value) => {
            const site = sites.find((choice) => choice.id === value);
            change(
              site === undefined
                ? { siteId: null }
                : { siteId: site.id, horizon: horizonHistory(site.horizon) },
            );
          }}
        />
      </div>
      {problem === null ? null : <FieldError id="scenario.horizon-error">{problem}</FieldError>}
      <HorizonEditor
        history={draft.horizon}
        lowestAltitudeDeg={limit(draft.settings.lowestAltitudeDeg, 20)}
        highestAltitudeDeg={limit(draft.settings.highestAltitudeDeg, 70)}
        onChange={(edit) => {
          const horizon = changeHorizon(draft.horizon, edit);
          change({
            horizon,
            siteId: horizon.points === draft.horizon.points ? draft.siteId : null,
          });
        }}
      />
    </Fold>
  );
}
