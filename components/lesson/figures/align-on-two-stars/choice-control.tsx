import { useId } from 'react';
import { Select } from '@/components/ui/select';

/** A list to choose one from, with its label. */
export function ChoiceControl(props: {
  label: string;
  value: string;
  options: readonly { id: string; title: string }[];
  onChange: (id: string) => void;
}) {
  const id = useId();
  return (
    <div>
      <label htmlFor={id} className="text-sm font-semibold">
        {props.label}
      </label>
      <Select id={id} value={props.value} onChange={(event) => props.onChange(event.target.value)}>
        {props.options.map((option) => (
          <option key={option.id} value={option.id}>
            {option.title}
          </option>
        ))}
      </Select>
    </div>
  );
}
