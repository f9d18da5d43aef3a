import type { Evidence } from '@/lib/faults/evidence';
import type { Look } from '@/lib/variants/fault-variant';
import type { FaultView } from '../fault-view';
import { LandingBlock } from './landing-block';
import { observationWords } from './observation-words';
import { OutcomePicture } from './outcome-picture';
import { outcomeFigures, outcomeInWords, solvedZeroNote } from './outcome-words';
import { SettingsPaper } from './settings-paper';

/** One item of evidence, opened; nothing where it has not been looked at. */
export function EvidenceBody({ look, view }: { look: Look; view: FaultView }) {
  const { first, second, outcome, later, card, observations } = view.evidence;
  switch (look) {
    case 'first':
      return first && <LandingBlock landing={first} view={view} />;
    case 'second':
      return second && <LandingBlock landing={second} view={view} />;
    case 'outcome':
      return outcome && <Outcome outcome={outcome} solvesForZero={view.solvesForZero} />;
    case 'later':
      return later && <Later later={later} view={view} />;
    case 'card':
      return (
        card && (
          <div className="flex flex-wrap gap-x-6 gap-y-3">
            <SettingsPaper card={card} />
            <p className="max-w-56 min-w-40 flex-1 self-center text-sm text-soft">
              Lay it beside what is certain of the evening, line by line.
            </p>
          </div>
        )
      );
    case 'observations':
      return (
        observations && (
          <ul className="space-y-1.5">
            {observations.map((observation) => (
              <li key={observation} className="border-s-2 border-accent ps-3">
                {observationWords[observation]}
              </li>
            ))}
            {observations.length === 0 ? <li>Nobody noticed anything odd.</li> : null}
          </ul>
        )
      );
  }
}

function Outcome({
  outcome,
  solvesForZero,
}: {
  outcome: Evidence['outcome'];
  solvesForZero: boolean;
}) {
  const figures = outcomeFigures(outcome, solvesForZero);
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
          {outcome.kind === 'agree' && solvesForZero ? (
            <p className="mt-2 text-sm">{solvedZeroNote}</p>
          ) : null}
        </figcaption>
      </div>
    </figure>
  );
}

function Later({ later, view }: { later: Evidence['later']; view: FaultView }) {
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
