import type { AnswerFieldsProps } from './answers';
import { OptionRow } from './option-row';

/** Several answers may be right. */
export function SeveralFields({
  face,
  answer,
  onAnswer,
  name,
  disabled,
}: AnswerFieldsProps<'several'>) {
  return (
    <>
      <p className="text-sm text-soft">More than one may be right. Tick each that is.</p>
      {face.options.map(({ id, text }) => (
        <OptionRow
          key={id}
          type="checkbox"
          id={`${name}-${id}`}
          name={name}
          value={id}
          checked={answer.options.includes(id)}
          disabled={disabled}
          onChange={(checked) => {
            const others = answer.options.filter((one) => one !== id);
            onAnswer({ kind: 'several', options: checked ? [...others, id] : others });
          }}
        >
          {text}
        </OptionRow>
      ))}
    </>
  );
}
