'use client';

import { Field } from '@/components/ui/field';
import { RadioGroup } from '@/components/ui/radio-group';
import { Select } from '@/components/ui/select';
import { powerLimits, type PowerDraft } from '@/lib/grading/bench/power/power-submission';
import { bayCount } from '@/lib/power/holder';
import { powerPlans } from '@/lib/power/night';
import { supplyVerdicts } from '@/lib/power/supply';
import { NumberAnswer } from '../bench/number-answer';
import type { PowerViewProps } from './power-play';
import { planNames, verdictNames, voltsText } from './power-words';

/** What is asked beside the bench. Figures that are typed merge into one step of undo. */
export function PowerQuestions(props: PowerViewProps) {
  switch (props.variant.template) {
    case 'choose-the-supply':
      return <Verdicts {...props} />;
    case 'find-the-reversed':
      return (
        <NumberAnswer
          label="How many cells were the wrong way round?"
          unit="cells"
          least={0}
          most={bayCount}
          value={props.draft.reversedCount}
          onChange={(value) => {
            set(props, { reversedCount: value === null ? null : Math.round(value) });
          }}
        />
      );
    case 'last-the-night':
      return <Night {...props} />;
    case 'fill-the-holder':
    case 'switch-on':
      return null;
  }
}

const set = ({ draft, change }: PowerViewProps, part: Partial<PowerDraft>): void => {
  change({ ...draft, ...part });
};

function Verdicts(props: PowerViewProps) {
  const { variant, draft } = props;
  return (
    <fieldset className="space-y-2">
      <legend className="font-semibold">What is to be said of each supply?</legend>
      {variant.setup.supplies.map(({ id }) => (
        <Field key={id} label={`Supply ${id}`}>
          {(control) => (
            <Select
              {...control}
              value={draft.verdicts[id] ?? ''}
              onChange={(event) => {
                const verdict = supplyVerdicts.find((one) => one === event.target.value);
                const others = Object.entries(draft.verdicts).filter(([one]) => one !== id);
                const said = verdict === undefined ? [] : [[id, verdict] as const];
                set(props, { verdicts: Object.fromEntries([...others, ...said]) });
              }}
            >
              <option value="">Choose …</option>
              {supplyVerdicts.map((verdict) => (
                <option key={verdict} value={verdict}>
                  {verdictNames[verdict]}
                </option>
              ))}
            </Select>
          )}
        </Field>
      ))}
    </fieldset>
  );
}

function Night(props: PowerViewProps) {
  const { variant, draft } = props;
  const limit = voltsText(variant.setup.needs.resetBelowV);
  return (
    <div className="space-y-3">
      <NumberAnswer
        label="Mean current"
        unit="mA"
        least={0}
        most={powerLimits.milliamperes}
        value={draft.meanMilliamperes}
        onChange={(meanMilliamperes) => {
          set(props, { meanMilliamperes });
        }}
      />
      <NumberAnswer
        label="Run time"
        unit="hours"
        least={0}
        most={powerLimits.hours}
        value={draft.runTimeHours}
        onChange={(runTimeHours) => {
          set(props, { runTimeHours });
        }}
      />
      <NumberAnswer
        label="Volts at the socket while slewing, with the cells fresh"
        unit="V"
        least={0}
        most={powerLimits.volts}
        value={draft.slewingVolts}
        onChange={(slewingVolts) => {
          set(props, { slewingVolts });
        }}
      />
      <RadioGroup<string>
        legend={`Does a slew make the computer start afresh (below ${limit})?`}
        name="resets"
        inline
        options={[
          { value: 'yes', label: 'Yes' },
          { value: 'no', label: 'No' },
        ]}
        value={draft.resets === null ? '' : draft.resets ? 'yes' : 'no'}
        onValueChange={(value) => {
          set(props, { resets: value === 'yes' });
        }}
      />
      <RadioGroup<string>
        legend="Your plan for tonight"
        name="plan"
        options={powerPlans.map((plan) => ({ value: plan, label: planNames[plan] }))}
        value={draft.plan ?? ''}
        onValueChange={(value) => {
          set(props, { plan: powerPlans.find((plan) => plan === value) ?? null });
        }}
      />
    </div>
  );
}
