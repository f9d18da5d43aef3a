import { classNames } from '@/components/ui/class-names';
import { FieldError } from '@/components/ui/field';
import { inputLook } from '@/components/ui/input-look';
import type { AnswerFieldsProps } from './answers';

type NumericFieldProps = AnswerFieldsProps<'numeric'> & {
  /** Says that what stands here is no number; it is left as it was typed. */
  numberNeeded: boolean;
};

/** A number in its unit. */
export function NumericField({
  face,
  answer,
  onAnswer,
  name,
  disabled,
  numberNeeded,
}: NumericFieldProps) {
  return (
    <div className="flex flex-wrap items-center gap-2">
      <label htmlFor={name} className="text-soft">
        Your answer
      </label>
      <input
        id={name}
        name={name}
        // Some phones’ keypads for decimals have no minus sign. The same for every question, so that
        // the keypad does not tell the sign of the answer.
        inputMode="text"
        autoCapitalize="off"
        spellCheck={false}
        autoComplete="off"
        maxLength={40}
        value={answer.text}
        disabled={disabled}
        aria-describedby={numberNeeded ? `${name}-unit ${name}-error` : `${name}-unit`}
        aria-invalid={numberNeeded || undefined}
        onChange={(event) => {
          onAnswer({ kind: 'numeric', text: event.currentTarget.value });
        }}
        className={classNames(inputLook, 'max-w-28 font-figures')}
      />
      <span id={`${name}-unit`} className="text-soft">
        {face.unit}
      </span>
      {numberNeeded ? (
        <div role="alert" className="basis-full">
          <FieldError id={`${name}-error`}>
            A number is needed here: figures only, such as 35 or 2.5.
          </FieldError>
        </div>
      ) : null}
    </div>
  );
}
