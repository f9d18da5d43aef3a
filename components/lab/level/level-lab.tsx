'use client';

import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import type { BenchLabProps } from '../bench/bench-lab-props';
import { BenchWorkbench } from '../bench/bench-workbench';
import { levelParts } from './level-parts';
import { LevelResultView } from './level-result';
import { levelText } from './level-text';

/** "Level" on its bench. */
export function LevelLab(props: BenchLabProps<LevelVariant>) {
  return (
    <BenchWorkbench
      {...props}
      parts={levelParts}
      text={levelText}
      renderResult={(result) =>
        result.lab === 'level' ? <LevelResultView variant={props.variant} result={result} /> : null
      }
    />
  );
}
