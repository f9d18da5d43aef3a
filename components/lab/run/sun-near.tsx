'use client';

import { Notice } from '@/components/ui/notice';
import { nearestToSunDeg } from '@/lib/alignment/sun-distance';
import type { RunModel } from './run-model';
import { useRunSnapshot } from './use-run-lab';

/** Above the scene, where no fold hides it: the Sun is up, and the tube is not far from it. */
export function SunNear({ model }: { model: RunModel }) {
  const { sunDeg } = useRunSnapshot(model);
  if (sunDeg === null) return null;
  return (
    <Notice
      tone="danger"
      title={`The Sun is ${String(sunDeg)}° from the telescope`}
      live={sunDeg < nearestToSunDeg + 5 ? 'alert' : 'status'}
    >
      {sunDeg < nearestToSunDeg
        ? 'Turn away at once. At a real telescope an eye could be lost here. This run has not been safe.'
        : `Do not come nearer than ${String(nearestToSunDeg)}°. A telescope never looks near the Sun.`}
    </Notice>
  );
}
