'use client';

import { WithCatalogue } from '../shell/with-catalogue';
import type { RunLabProps } from './run-lab-props';
import { RunWorkbench } from './run-workbench';

/** "Alignment run": the telescope under its turning sky, the task beside it, and the same as a table. */
export function RunLab(props: RunLabProps) {
  return (
    <WithCatalogue version={props.variant.catalogueVersion}>
      {(catalogue) => <RunWorkbench {...props} catalogue={catalogue} />}
    </WithCatalogue>
  );
}
