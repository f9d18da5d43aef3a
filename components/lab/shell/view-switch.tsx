'use client';

/** One way of looking at the task. Where it cannot be drawn, it cannot be chosen. */
export type LabViewChoice<View extends string> = {
  value: View;
  label: string;
  disabled?: boolean;
};

type ViewSwitchProps<View extends string> = {
  views: readonly LabViewChoice<View>[];
  view: View;
  /** "How to look at the sky" */
  label: string;
  onChange: (view: View) => void;
};

/** Several ways to the same task; what has been chosen stays chosen. */
export function ViewSwitch<View extends string>({
  views,
  view,
  label,
  onChange,
}: ViewSwitchProps<View>) {
  return (
    <div role="group" aria-label={label} className="flex border-b-2 border-strong bg-panel px-2">
      {views.map((choice) => (
        <button
          key={choice.value}
          type="button"
          aria-pressed={view === choice.value}
          disabled={choice.disabled ?? false}
          onClick={() => {
            onChange(choice.value);
          }}
          className="-mb-0.5 min-h-11 border-b-4 border-transparent px-4 pt-1 text-soft hover:text-ink disabled:opacity-60 aria-pressed:border-accent aria-pressed:font-semibold aria-pressed:text-ink"
        >
          {choice.label}
        </button>
      ))}
    </div>
  );
}
