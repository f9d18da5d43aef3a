import type { Look } from '@/lib/variants/fault-variant';
import type { FaultView } from '../fault-view';
import { LandingBlock } from './landing-block';
import { observationWords } from './observation-words';
import { OutcomePicture } from './outcome-picture';
import { outcomeFigures, outcomeInWords, solvedZeroNote } from './outcome-words';
import { SettingsPaper } from './settings-paper';

/** One item of evidence, opened. */
export function EvidenceBody({ look, view }: { look: Look; view: FaultView }) {
  const { evidence } = view;
  switch (look) {
    case 'first':
      return <LandingBlock landing={evidence.first} view={view} />;
    case 'second':
      return <LandingBlock landing={evidence.second} view={view} />;
    case 'outcome':
      return <Outcome view={view} />;
    case 'later':
      return <Later view={view} />;
    case 'card':
      return (
        <div className="flex flex-wrap gap-x-6 gap-y-3">
          <SettingsPaper card={evidence.card} />
          <p className="max-w-56 min-w-40 flex-1 self-center text-sm text-soft">
            Lay it beside what is certain of the evening, line by line.
          </p>
        </div>
      );
    case 'observations':
      return (
        <ul className="space-y-1.5">
          {evidence.observations.map((observation) => (
            <li key={observation} className="border-s-2 border-accent ps-3">
              {observationWords[observation]}
            </li>
          ))}
          {evidence.observations.length === 0 ? <li>Nobody noticed anything odd.</li> : null}
        </ul>
      );
  }
}

function Outcome({ view }: { view: FaultView }) {
  const { outcome } = view.evidence;
  const figures = outcomeFigures(outcome, view.solvesForZero);
  return (
    <figure className="@container">
      <div className="grid gap-x-5 gap-y-3 @lg:grid-cols-[minmax(0,17rem)_minmax(0,1fr)]">
        <OutcomePicture outcome={outcome} />
        <figcaption className="self-center">
          <p className="text-lg leading-snug font-semibold">{outcomeInWords(outcome)}</p>
          {figures.length === 0 ? null : (
            <dl className="mt-2 text-sm">
              {figures.map(({ name, value }) => (
                <div key={name} className="flex justify-between gap-4 border-t border-line py-1">
                  <dt className="text-soft">{name}</dt>
                  <dd className="font-figures shrink-0 font-semibold">{value}</dd>
                </div>
              ))}
            </dl>
          )}
          {outcome.kind === 'agree' && view.solvesForZero ? (
            <p className="mt-2 text-sm">{solvedZeroNote}</p>
          ) : null}
        </figcaption>
      </div>
    </figure>
  );
}

function Later({ view }: { view: FaultView }) {
  const { later } = view.evidence;
  if (later.length === 0)
    return <p>There was no alignment to go by, so the telescope was sent nowhere afterwards.</p>;
  return (
    <div className="grid grid-cols-[repeat(auto-fill,minmax(min(15rem,100%),1fr))] gap-x-6 gap-y-5">
      {later.map((landing, index) => (
        <LandingBlock
          key={`${String(index)}-${String(landing.hip)}`}
          landing={landing}
          view={view}
        />
      ))}
    </div>
  );
}
