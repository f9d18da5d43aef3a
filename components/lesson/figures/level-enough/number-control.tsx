import { useId } from 'react';
import { sliderLook } from '../degree-control';

type NumberControlProps = {
  label: string;
  value: number;
  min: number;
  max: number;
  step: number;
  /** The value as it is read: "12 mm out". */
  text: string;
  onChange: (value: number) => void;
};

/** A slider with its value in words beside the label: by thumb and by arrow keys. */
export function NumberControl({ label, value, text, onChange, ...range }: NumberControlProps) {
  const id = useId();
  return (
    <div>
      <div className="flex items-baseline justify-between gap-3 text-sm">
        <label htmlFor={id} className="font-semibold">
          {label}
        </label>
        <span className="font-figures whitespace-nowrap" aria-hidden="true">
          {text}
        </span>
      </div>
      <input
        id={id}
        type="range"
        {...range}
        value={value}
        aria-valuetext={text}
        onChange={(event) => onChange(event.target.valueAsNumber)}
        className={sliderLook}
      />
    </div>
  );
}
