import { cureWords } from '@/components/lab/fault/cure-words';
import { Notice } from '@/components/ui/notice';
import { Panel } from '@/components/ui/panel';
import type { FaultResult } from '@/lib/grading/fault-result';
import { curedRightly } from './fault-result-words';

/** What puts it right, whether that was named, and the care it takes. */
export function FaultResultCure({ result }: { result: FaultResult }) {
  const cautions = result.rightCures
    .map((cure) => cureWords[cure].caution)
    .filter((caution) => caution !== undefined);
  return (
    <Panel title="What cures it" level={3}>
      <ul className="space-y-2">
        {result.rightCures.map((cure) => (
          <li key={cure}>
            <span className="font-semibold">{cureWords[cure].name}</span>
            <span className="block text-sm text-soft">{cureWords[cure].line}</span>
          </li>
        ))}
      </ul>
      <p className="mt-3">
        {curedRightly(result)
          ? 'That is what you named.'
          : `You named: ${cureWords[result.cure].name}. It leaves this fault as it is.`}
      </p>
      {cautions.length === 0 ? null : (
        <Notice tone="caution" title="With care" className="mt-3">
          {cautions.map((caution) => (
            <p key={caution}>{caution}</p>
          ))}
        </Notice>
      )}
    </Panel>
  );
}
