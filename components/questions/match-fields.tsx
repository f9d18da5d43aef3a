import { Select } from '@/components/ui/select';
import type { AnswerFieldsProps } from './answers';

/** Each on the left gets one of those on the right, by a list of its own. */
export function MatchFields({
  face,
  answer,
  onAnswer,
  name,
  disabled,
}: AnswerFieldsProps<'match'>) {
  return (
    <ul className="mt-2 space-y-3">
      {face.left.map(({ id, text }) => (
        <li
          key={id}
          className="grid items-center gap-x-4 gap-y-1 sm:grid-cols-[minmax(0,1fr)_minmax(0,1fr)]"
        >
          <label htmlFor={`${name}-${id}`}>{text}</label>
          <Select
            id={`${name}-${id}`}
            name={`${name}-${id}`}
            value={answer.pairs[id] ?? ''}
            disabled={disabled}
            onChange={(event) => {
              const { value } = event.currentTarget;
              const others = Object.entries(answer.pairs).filter(([left]) => left !== id);
              const pairs = Object.fromEntries(value === '' ? others : [...others, [id, value]]);
              onAnswer({ kind: 'match', pairs });
            }}
          >
            <option value="">Choose …</option>
            {face.right.map((right) => (
              <option key={right.id} value={right.id}>
                {right.text}
              </option>
            ))}
          </Select>
        </li>
      ))}
    </ul>
  );
}
