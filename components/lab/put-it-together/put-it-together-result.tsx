import { BenchResultView } from '@/components/grading/bench-result-view';
import { Panel } from '@/components/ui/panel';
import type { PutItTogetherResult } from '@/lib/grading/bench/put-it-together/put-it-together-result';
import { putItTogetherModelAnswer } from '@/lib/grading/bench/put-it-together/put-it-together-model-answer';
import type { AssemblyStep } from '@/lib/assembly/steps';
import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together/put-it-together-variant';
import { criterionName, gateWords, slipWords } from './slip-words';
import { StandDrawing } from './stand-drawing';
import { standInWords, standNow } from './stand-words';
import { stepName } from './step-words';

type PutItTogetherResultViewProps = {
  variant: PutItTogetherVariant;
  result: PutItTogetherResult;
  markShownAbove?: boolean;
};

/** What came of "Put it together": for student and teacher alike. */
export function PutItTogetherResultView({
  variant,
  result,
  markShownAbove = false,
}: PutItTogetherResultViewProps) {
  return (
    <BenchResultView
      verdict={verdictOf(result)}
      result={result}
      criterionName={(id) => criterionName[id]}
      gateWords={({ id }) => gateWords[id]}
      slipWords={slipWords}
      picture={<AsItStood variant={variant} result={result} />}
      markShownAbove={markShownAbove}
    />
  );
}

function verdictOf({ gates, slips, criteria }: PutItTogetherResult): string {
  if (gates.length > 0) return 'Somebody could have been hurt, so it is not yet.';
  if (slips.length === 0) return 'It stands, all of it, and nobody was in danger.';
  const order = criteria.find(({ id }) => id === 'order');
  return order !== undefined && order.earned === order.possible
    ? 'The order is right. Not all of the rest is.'
    : 'It stands, but some of it came too early.';
}

function AsItStood({
  variant,
  result,
}: {
  variant: PutItTogetherVariant;
  result: PutItTogetherResult;
}) {
  const stand = standNow(variant, { order: [...result.order] });
  const text = standInWords(stand);
  return (
    <div className="grid gap-6 lg:grid-cols-[minmax(0,1fr)_minmax(0,1fr)]">
      <figure className="keep-together space-y-2">
        <div className="on-sky aspect-[3/2] rounded-md bg-[var(--sky)] p-2">
          <StandDrawing stand={stand} kind={variant.tubeType} label={text} />
        </div>
        <figcaption className="text-sm">{text}</figcaption>
      </figure>
      <div className="grid gap-4 sm:grid-cols-2">
        <Steps title="Your order" steps={result.order} />
        <Steps title="One that is right" steps={putItTogetherModelAnswer(variant).order} />
      </div>
    </div>
  );
}

function Steps({ title, steps }: { title: string; steps: readonly AssemblyStep[] }) {
  return (
    <Panel title={title} level={3}>
      <ol className="list-decimal space-y-1 ps-6 text-sm">
        {steps.map((step) => (
          <li key={step}>{stepName[step]}</li>
        ))}
      </ol>
    </Panel>
  );
}
