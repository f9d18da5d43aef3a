import { EvidenceBody } from '@/components/lab/fault/evidence/evidence-body';
import { lookWords, testSlewTitle } from '@/components/lab/fault/evidence/look-words';
import { SettingsBesideTruth } from '@/components/lab/fault/evidence/settings-beside-truth';
import type { WholeFaultView } from '@/components/lab/fault/fault-view';
import { faultWords } from '@/components/lab/fault/fault-words';
import { Panel } from '@/components/ui/panel';
import type { FaultResult } from '@/lib/grading/fault-result';
import type { Look } from '@/lib/variants/fault-variant';
import { FaultResultSlew } from './fault-result-slew';
import { evidenceInFigures, namedRightly, quoted, tellTaleTitle } from './fault-result-words';

/** Where the fault shows, less the go-tos of an evening that had none. */
const seenInOf = ({ fault }: FaultResult, { evidence }: WholeFaultView): readonly Look[] =>
  faultWords[fault].seenIn.filter((look) => look !== 'later' || evidence.later.length > 0);

type EvidenceProps = { result: FaultResult; variant: WholeFaultView };

/** How such a fault shows, and this evening's figures for it. */
export function FaultResultReasons({ result, variant }: EvidenceProps) {
  const { shows } = faultWords[result.fault];
  return (
    <section className="max-w-measure space-y-3">
      <h2 className="text-xl font-semibold">How it shows</h2>
      <p>{shows}</p>
      <ul className="list-disc space-y-1 ps-5">
        {seenInOf(result, variant).map((look) => (
          <li key={look}>
            <strong className="font-semibold">{lookWords[look].title}</strong>:{' '}
            {evidenceInFigures(look, variant)}{' '}
            <span className="text-sm text-soft">({hadInWords(look, result, variant)})</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What told the fault from the answer, then the rest of what shows it. */
export function FaultResultEvidence({ result, variant }: EvidenceProps) {
  const tellTale = namedRightly(result) ? null : result.tellTale;
  const shown = seenInOf(result, variant).filter((look) => look !== tellTale);
  return (
    <div className="grid grid-cols-[minmax(0,1fr)] gap-4 xl:grid-cols-2 print:block print:space-y-4">
      {tellTale === null ? null : (
        <Panel
          title={`What tells ${quoted(result.fault)} from ${quoted(result.named)}: ${tellTaleTitle(tellTale).toLowerCase()}`}
          level={3}
          className="keep-together border-t-accent xl:col-span-2"
        >
          <TellTale tellTale={tellTale} result={result} variant={variant} />
        </Panel>
      )}
      {result.testSlew === null || tellTale === 'test-slew' ? null : (
        <Panel title={testSlewTitle} level={3} className="keep-together xl:col-span-2">
          <FaultResultSlew result={result} variant={variant} />
        </Panel>
      )}
      {shown.map((look) => (
        <Panel key={look} title={lookWords[look].title} level={3} className="keep-together">
          <ResultEvidence look={look} variant={variant} />
        </Panel>
      ))}
    </div>
  );
}

/** The settings stand beside what would have been right; all else is as it was in the lab. */
function ResultEvidence({ look, variant }: { look: Look; variant: WholeFaultView }) {
  return look === 'card' ? (
    <SettingsBesideTruth card={variant.evidence.card} right={variant.facts.right} />
  ) : (
    <EvidenceBody look={look} view={variant} />
  );
}

function TellTale({ tellTale, result, variant }: EvidenceProps & { tellTale: Look | 'test-slew' }) {
  return tellTale === 'test-slew' ? (
    <FaultResultSlew result={result} variant={variant} />
  ) : (
    <ResultEvidence look={tellTale} variant={variant} />
  );
}

function hadInWords(look: Look, result: FaultResult, variant: WholeFaultView): string {
  if (variant.open.includes(look)) return 'it lay open';
  return result.looked.includes(look) ? 'you looked at it' : 'you did not look at it';
}
