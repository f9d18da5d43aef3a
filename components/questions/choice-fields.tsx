import type { AnswerFieldsProps } from './answers';
import { OptionRow } from './option-row';

/** One of several answers. */
export function ChoiceFields({
  face,
  answer,
  onAnswer,
  name,
  disabled,
}: AnswerFieldsProps<'choice'>) {
  return face.options.map(({ id, text }) => (
    <OptionRow
      key={id}
      type="radio"
      id={`${name}-${id}`}
      name={name}
      value={id}
      checked={answer.option === id}
      disabled={disabled}
      onChange={() => {
        onAnswer({ kind: 'choice', option: id });
      }}
    >
      {text}
    </OptionRow>
  ));
}
