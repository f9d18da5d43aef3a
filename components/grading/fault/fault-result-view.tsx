import { EveningStrip } from '@/components/lab/fault/evidence/evening-strip';
import type { WholeFaultView } from '@/components/lab/fault/fault-view';
import { faultWords } from '@/components/lab/fault/fault-words';
import { arcminuteInWords } from '@/components/sky/angle-words';
import { Meter } from '@/components/ui/meter';
import { Panel } from '@/components/ui/panel';
import type { FaultResult } from '@/lib/grading/fault-result';
import { FaultResultCure } from './fault-result-cure';
import { FaultResultEvidence, FaultResultReasons } from './fault-result-evidence';
import { FaultResultMarks } from './fault-result-marks';
import { faultAdviceInWords, verdictInWords } from './fault-result-words';
import { markText } from '../mark-text';

type FaultResultViewProps = {
  variant: WholeFaultView;
  result: FaultResult;
  /** Where the page shows the mark already, it need not stand here again. */
  markShownAbove?: boolean;
};

/** What it was and why, what cures it, and what each part was worth: for student and teacher alike. */
export function FaultResultView({ variant, result, markShownAbove = false }: FaultResultViewProps) {
  const words = faultWords[result.fault];
  return (
    <div className="space-y-8">
      <div className="grid gap-6 lg:grid-cols-[minmax(0,1fr)_minmax(0,26rem)] print:grid-cols-2">
        <div className="max-w-measure space-y-3">
          <p className="text-xl leading-snug font-semibold">{verdictInWords(result)}</p>
          {markShownAbove ? null : (
            <Meter
              value={result.total}
              label="Mark"
              valueText={`${markText(result.total)} of 100`}
            />
          )}
          <p className="border-s-4 border-accent ps-3">
            {faultAdviceInWords(result, variant.open)}
          </p>
          <p className="text-sm text-soft">{arcminuteInWords}</p>
        </div>
        <FaultResultMarks result={result} variant={variant} />
      </div>
      <EveningStrip facts={variant.facts} kitName={variant.kit.name} />
      <div className="keep-together grid items-start gap-6 lg:grid-cols-[minmax(0,1fr)_minmax(0,26rem)] print:grid-cols-2">
        <FaultResultReasons result={result} variant={variant} />
        <FaultResultCure result={result} />
      </div>
      <FaultResultEvidence result={result} variant={variant} />
      <div className="keep-together grid items-start gap-4 md:grid-cols-2 print:grid-cols-2">
        <Panel title="What looks the same tonight" level={3}>
          <LookAlikes result={result} />
        </Panel>
        <Misconceptions result={result} own={words.misconception} />
      </div>
    </div>
  );
}

function LookAlikes({ result }: { result: FaultResult }) {
  const others = result.alike.filter((fault) => fault !== result.fault);
  if (others.length === 0)
    return <p>Nothing else fits all of the evidence of this evening, looked at closely.</p>;
  return (
    <>
      <p>
        With this sky and this telescope nobody could have told{' '}
        {others.length === 1 ? 'this' : 'these'} from it, so{' '}
        {others.length === 1 ? 'it counts' : 'they count'} as right too:
      </p>
      <ul className="mt-2 space-y-2">
        {others.map((fault) => (
          <li key={fault}>
            <span className="font-semibold">{faultWords[fault].name}</span>
            <span className="block text-sm text-soft">{faultWords[fault].line}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

/** What many believe, of what it was and of what was named instead. */
function Misconceptions({ result, own }: { result: FaultResult; own: string | undefined }) {
  const said = [
    { fault: result.fault, text: own },
    ...(result.named === result.fault
      ? []
      : [{ fault: result.named, text: faultWords[result.named].misconception }]),
  ].filter((entry) => entry.text !== undefined);
  if (said.length === 0) return null;
  return (
    <Panel title="Worth knowing" level={3}>
      <ul className="max-w-measure space-y-2">
        {said.map(({ fault, text }) => (
          <li key={fault}>
            <strong className="font-semibold">{faultWords[fault].name}.</strong> {text}
          </li>
        ))}
      </ul>
    </Panel>
  );
}
