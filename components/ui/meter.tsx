import { useId, type ReactNode } from 'react';

type MeterProps = {
  /** 0–100. */
  value: number;
  label: ReactNode;
  /** What stands at the end of the bar, such as "82 of 100"; the rounded value by default. */
  valueText?: string;
  /** A mark on the bar, 0–100: the pass mark, or what the best would have reached. */
  markAt?: number;
  markLabel?: string;
};

/** A share as a bar on a graduated rule, with its number beside it. */
export function Meter({ value, label, valueText, markAt, markLabel }: MeterProps) {
  const labelId = useId();
  const shown = Math.min(100, Math.max(0, value));
  const text = valueText ?? String(Math.round(shown));
  return (
    <div className="keep-together">
      <div className="flex items-baseline justify-between gap-4">
        <span id={labelId}>{label}</span>
        <span className="font-figures font-semibold">{text}</span>
      </div>
      <div
        role="meter"
        aria-labelledby={labelId}
        aria-valuemin={0}
        aria-valuemax={100}
        aria-valuenow={Math.round(shown)}
        aria-valuetext={markLabel === undefined ? text : `${text}; ${markLabel}`}
        className="relative mt-1 h-4 border border-strong bg-sunken"
      >
        <div
          className="h-full border-e-2 border-ink bg-accent [print-color-adjust:exact] print:bg-[#999999]"
          style={{ width: `${String(shown)}%` }}
        />
        {markAt === undefined ? null : (
          <span
            aria-hidden="true"
            className="absolute -inset-y-1 w-0.5 bg-ink"
            style={{ left: `${String(Math.min(100, Math.max(0, markAt)))}%` }}
          />
        )}
      </div>
      {markLabel === undefined ? null : <p className="mt-1 text-sm text-soft">{markLabel}</p>}
    </div>
  );
}
