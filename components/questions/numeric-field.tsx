import { classNames } from '@/components/ui/class-names';
import { inputLook } from '@/components/ui/input-look';
import type { AnswerFieldsProps } from './answers';

/** A number in its unit. */
export function NumericField({
  face,
  answer,
  onAnswer,
  name,
  disabled,
}: AnswerFieldsProps<'numeric'>) {
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
        aria-describedby={`${name}-unit`}
        onChange={(event) => {
          onAnswer({ kind: 'numeric', text: event.currentTarget.value });
        }}
        className={classNames(inputLook, 'max-w-28 font-figures')}
      />
      <span id={`${name}-unit`} className="text-soft">
        {face.unit}
      </span>
    </div>
  );
}
