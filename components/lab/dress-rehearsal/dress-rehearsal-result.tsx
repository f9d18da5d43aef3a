import { Check, Minus } from 'lucide-react';
import { BenchResultView } from '@/components/grading/bench-result-view';
import { Panel } from '@/components/ui/panel';
import type { DressRehearsalResult } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-result';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { MissesSection } from './misses-section';
import {
  criterionWords,
  gateWords,
  powerInWords,
  skillWords,
  slipWords,
  verdictOf,
} from './result-words';
import { StageResults } from './stage-results';

type DressRehearsalResultViewProps = {
  variant: DressRehearsalVariant;
  result: DressRehearsalResult;
  markShownAbove?: boolean;
};

/** What came of "Dress rehearsal": for student and teacher alike. */
export function DressRehearsalResultView({
  variant,
  result,
  markShownAbove = false,
}: DressRehearsalResultViewProps) {
  // Two gates of one stage are two.
  const gates = result.gates.map((gate) => ({ id: `${gate.id} ${gate.gate}`, gate }));
  return (
    <BenchResultView
      verdict={verdictOf(result)}
      result={{ ...result, gates }}
      criterionName={criterionWords}
      gateWords={({ gate }) => gateWords(gate, result)}
      slipWords={(slip) => slipWords(slip, result, variant)}
      picture={<MissesSection misses={result.misses} />}
      markShownAbove={markShownAbove}
    >
      <Panel title="Power">
        <p className="max-w-measure">{powerInWords(result.power)}</p>
      </Panel>
      <StageResults variant={variant} result={result} />
      <SkillsShown skills={result.skills} />
    </BenchResultView>
  );
}

function SkillsShown({ skills }: Pick<DressRehearsalResult, 'skills'>) {
  return (
    <Panel title="Skills shown this evening">
      <ul className="grid gap-x-6 gap-y-1 sm:grid-cols-2 lg:grid-cols-3">
        {skills.map(({ skill, shown }) => (
          <li key={skill} className="flex items-center gap-2">
            {shown ? (
              <Check aria-hidden="true" className="size-5 shrink-0 text-good" />
            ) : (
              <Minus aria-hidden="true" className="size-5 shrink-0 text-soft" />
            )}
            <span className={shown ? '' : 'text-soft'}>
              {skillWords[skill]}
              {shown ? '' : ': not yet'}
              {shown ? <span className="sr-only">: shown</span> : null}
            </span>
          </li>
        ))}
      </ul>
    </Panel>
  );
}
