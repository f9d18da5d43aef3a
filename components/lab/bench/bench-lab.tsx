'use client';

import dynamic from 'next/dynamic';
import type { AnyBenchVariant } from '@/lib/variants/bench/bench-labs';
import type { BenchLabProps } from './bench-lab-props';

const PutItTogetherLab = dynamic(() =>
  import('../put-it-together/put-it-together-lab').then((module) => module.PutItTogetherLab),
);
const LevelLab = dynamic(() => import('../level/level-lab').then((module) => module.LevelLab));
const BalanceLab = dynamic(() =>
  import('../balance/balance-lab').then((module) => module.BalanceLab),
);
const PowerLab = dynamic(() => import('../power/power-lab').then((module) => module.PowerLab));
const FinderLab = dynamic(() => import('../finder/finder-lab').then((module) => module.FinderLab));
const FieldLab = dynamic(() => import('../field/field-lab').then((module) => module.FieldLab));
const ClockAndPlaceLab = dynamic(() =>
  import('../clock-and-place/clock-and-place-lab').then((module) => module.ClockAndPlaceLab),
);
const DressRehearsalLab = dynamic(() =>
  import('../dress-rehearsal/dress-rehearsal-lab').then((module) => module.DressRehearsalLab),
);

/** The bench of a task, whichever lab it is of; only that lab's code is fetched. */
export function BenchLab({ variant, ...session }: BenchLabProps<AnyBenchVariant>) {
  switch (variant.lab) {
    case 'put-it-together':
      return <PutItTogetherLab {...session} variant={variant} />;
    case 'level':
      return <LevelLab {...session} variant={variant} />;
    case 'balance':
      return <BalanceLab {...session} variant={variant} />;
    case 'power':
      return <PowerLab {...session} variant={variant} />;
    case 'finder':
      return <FinderLab {...session} variant={variant} />;
    case 'field':
      return <FieldLab {...session} variant={variant} />;
    case 'clock-and-place':
      return <ClockAndPlaceLab {...session} variant={variant} />;
    case 'dress-rehearsal':
      return <DressRehearsalLab {...session} variant={variant} />;
  }
}
