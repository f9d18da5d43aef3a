'use client';

export type LabView = 'sky' | 'table';

const views: readonly { value: LabView; label: string }[] = [
  { value: 'sky', label: 'Sky' },
  { value: 'table', label: 'Table' },
];

type ViewSwitchProps = { view: LabView; drawable: boolean; onChange: (view: LabView) => void };

/** Two ways to the same task; what has been chosen stays chosen. */
export function ViewSwitch({ view, drawable, onChange }: ViewSwitchProps) {
  return (
    <div
      role="group"
      aria-label="How to look at the sky"
      className="flex border-b-2 border-strong bg-panel px-2"
    >
      {views.map(({ value, label }) => (
        <button
          key={value}
          type="button"
          aria-pressed={view === value}
          disabled={value === 'sky' && !drawable}
          onClick={() => {
            onChange(value);
          }}
          className="-mb-0.5 min-h-11 border-b-4 border-transparent px-4 pt-1 text-soft hover:text-ink disabled:opacity-60 aria-pressed:border-accent aria-pressed:font-semibold aria-pressed:text-ink"
        >
          {label}
        </button>
      ))}
    </div>
  );
}
