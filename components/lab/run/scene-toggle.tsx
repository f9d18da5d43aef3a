'use client';

type SceneToggleProps = { pressed: boolean; onPress: () => void; label: string };

/** Something in the scene that can be switched on and off. */
export function SceneToggle({ pressed, onPress, label }: SceneToggleProps) {
  return (
    <button
      type="button"
      aria-pressed={pressed}
      onClick={onPress}
      className="min-h-11 rounded-md border border-sky-line bg-land-near/75 px-3 text-sm font-semibold text-on-sky hover:border-sky-lamp aria-pressed:border-sky-lamp aria-pressed:bg-sky-lamp aria-pressed:text-land-near lg:min-h-9"
    >
      {label}
    </button>
  );
}
