'use client';

import { SceneToggle } from './scene-toggle';

export type BenchSide = 'above' | 'side';

type SideSwitchProps = { side: BenchSide; onChange: (side: BenchSide) => void };

/** On a phone: the compass from above, or the level from the side. A wide screen shows both. */
export function SideSwitch({ side, onChange }: SideSwitchProps) {
  return (
    <div
      role="group"
      aria-label="Side to look at the telescope from"
      className="flex gap-2 lg:hidden"
    >
      <SceneToggle
        pressed={side === 'above'}
        onPress={() => {
          onChange('above');
        }}
        label="From above"
      />
      <SceneToggle
        pressed={side === 'side'}
        onPress={() => {
          onChange('side');
        }}
        label="From the side"
      />
    </div>
  );
}
