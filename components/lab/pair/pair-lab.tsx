'use client';

import { WithCatalogue } from '../shell/with-catalogue';
import type { PairLabProps } from './pair-lab-props';
import { PairWorkbench } from './pair-workbench';

/** "Pick the pair": the sky, the task beside it, and the same task as a table. */
export function PairLab(props: PairLabProps) {
  return (
    <WithCatalogue version={props.sky.catalogueVersion}>
      {(catalogue) => <PairWorkbench {...props} catalogue={catalogue} />}
    </WithCatalogue>
  );
}
