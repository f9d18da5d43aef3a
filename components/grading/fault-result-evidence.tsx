import { EvidenceBody } from '@/components/lab/fault/evidence/evidence-body';
import { LandingBlock } from '@/components/lab/fault/evidence/landing-block';
import { lookWords } from '@/components/lab/fault/evidence/look-words';
import { SettingsBesideTruth } from '@/components/lab/fault/evidence/settings-beside-truth';
import type { FaultView } from '@/components/lab/fault/fault-view';
import { faultWords } from '@/components/lab/fault/fault-words';
import { Panel } from '@/components/ui/panel';
import type { FaultResult } from '@/lib/grading/fault-result';
import type { Look } from '@/lib/variants/fault-variant';
import { evidenceInFigures, namedRightly, tellTaleTitle } from './fault-result-words';

/** What the evidence showed: how such a fault shows, this evening's figures, and what told it from the answer. */
export function FaultResultEvidence({
  result,
  variant,
}: {
  result: FaultResult;
  variant: FaultView;
}) {
  const { shows, seenIn, name } = faultWords[result.fault];
  const { tellTale } = result;
  const wrong = !namedRightly(result) && tellTale !== null;
  const shown = seenIn.filter((look) => look !== tellTale || !wrong).slice(0, wrong ? 2 : 3);
  return (
    <section className="space-y-4">
      <h2 className="text-xl font-semibold">How it shows</h2>
      <p className="max-w-measure">{shows}</p>
      <ul className="max-w-measure list-disc space-y-1 ps-5">
        {seenIn.map((look) => (
          <li key={look}>
            <strong className="font-semibold">{lookWords[look].title}</strong>:{' '}
            {evidenceInFigures(look, variant)}{' '}
            <span className="text-sm text-soft">({hadInWords(look, result, variant)})</span>
          </li>
        ))}
      </ul>
      {wrong ? (
        <Panel
          title={`What tells ${name.toLowerCase()} from ${faultWords[result.named].name.toLowerCase()}: ${tellTaleTitle(tellTale).toLowerCase()}`}
          level={3}
        >
          <TellTale tellTale={tellTale} result={result} variant={variant} />
        </Panel>
      ) : null}
      <div className="grid grid-cols-[minmax(0,1fr)] gap-4 xl:grid-cols-2">
        {shown.map((look) => (
          <Panel key={look} title={lookWords[look].title} level={3}>
            <ResultEvidence look={look} result={result} variant={variant} />
          </Panel>
        ))}
      </div>
    </section>
  );
}

type Parts = { look: Look; result: FaultResult; variant: FaultView };

/** The settings stand beside what would have been right; all else is as it was in the lab. */
function ResultEvidence({ look, result, variant }: Parts) {
  return look === 'card' ? (
    <SettingsBesideTruth card={variant.evidence.card} facts={variant.facts} fault={result.fault} />
  ) : (
    <EvidenceBody look={look} view={variant} />
  );
}

function TellTale({
  tellTale,
  result,
  variant,
}: {
  tellTale: Look | 'test-slew';
  result: FaultResult;
  variant: FaultView;
}) {
  if (tellTale !== 'test-slew')
    return <ResultEvidence look={tellTale} result={result} variant={variant} />;
  const done = variant.testSlews.find(({ hip }) => hip === result.testSlew);
  // Without one of the learner's own, the first that was on offer stands in.
  const landing = done ?? variant.testSlews[0];
  if (landing === undefined) return null;
  return (
    <div className="space-y-3">
      <p>
        {done === undefined
          ? 'You made none. This is what one would have shown.'
          : 'You made one. This is what it showed.'}
      </p>
      <LandingBlock landing={landing} view={variant} />
    </div>
  );
}

function hadInWords(look: Look, result: FaultResult, variant: FaultView): string {
  if (variant.open.includes(look)) return 'it lay open';
  return result.looked.includes(look) ? 'you looked at it' : 'you did not look at it';
}
