import { useId, useState } from 'react';
import { inputLook } from '@/components/ui/input-look';
import { classNames } from '@/components/ui/class-names';

type DegreeControlProps = {
  label: string;
  value: number;
  min: number;
  max: number;
  onChange: (value: number) => void;
};

// Drawn from the theme's colours: the browser's own track is grey, also where only red may shine.
export const sliderLook = [
  'h-(--target) w-full min-w-0 appearance-none bg-transparent',
  '[&::-webkit-slider-runnable-track]:h-1.5 [&::-webkit-slider-runnable-track]:rounded-full [&::-webkit-slider-runnable-track]:bg-strong',
  '[&::-webkit-slider-thumb]:-mt-[0.56rem] [&::-webkit-slider-thumb]:size-6 [&::-webkit-slider-thumb]:appearance-none [&::-webkit-slider-thumb]:rounded-full [&::-webkit-slider-thumb]:border-2 [&::-webkit-slider-thumb]:border-ink [&::-webkit-slider-thumb]:bg-accent',
  '[&::-moz-range-track]:h-1.5 [&::-moz-range-track]:rounded-full [&::-moz-range-track]:bg-strong',
  '[&::-moz-range-thumb]:size-5 [&::-moz-range-thumb]:rounded-full [&::-moz-range-thumb]:border-2 [&::-moz-range-thumb]:border-ink [&::-moz-range-thumb]:bg-accent',
].join(' ');

/** A slider and a number field for one angle in whole degrees: by thumb, by key or by typing. */
export function DegreeControl({ label, value, min, max, onChange }: DegreeControlProps) {
  const id = useId();
  // While it is typed, the field shows what is typed, even when that is no angle yet.
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <div className="grid grid-cols-[1fr_auto] items-center gap-x-3">
      <label htmlFor={id} className="col-span-2 text-sm font-semibold">
        {label}
      </label>
      <input
        type="range"
        aria-label={`${label}, slider`}
        aria-valuetext={`${String(Math.round(value))} degrees`}
        min={min}
        max={max}
        step={1}
        value={Math.round(value)}
        onChange={(event) => {
          setTyped(null);
          onChange(event.target.valueAsNumber);
        }}
        className={sliderLook}
      />
      <span className="relative inline-flex w-24">
        <input
          id={id}
          type="number"
          inputMode="numeric"
          min={min}
          max={max}
          value={typed ?? String(Math.round(value))}
          onChange={(event) => {
            setTyped(event.target.value);
            const number = event.target.valueAsNumber;
            if (number >= min && number <= max) onChange(number);
          }}
          onBlur={() => setTyped(null)}
          className={classNames(inputLook, 'pe-7 font-figures')}
        />
        <span
          aria-hidden="true"
          className="pointer-events-none absolute inset-y-0 end-3 flex items-center text-soft"
        >
          °
        </span>
      </span>
    </div>
  );
}
