'use client';

import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import type { BenchLabProps } from '../bench/bench-lab-props';
import { useInBrowser } from '../shell/use-in-browser';
import { WithCatalogue } from '../shell/with-catalogue';
import { RehearsalWorkbench } from './rehearsal-workbench';

/** "Dress rehearsal": the whole evening, once its stars are there. */
export function DressRehearsalLab(props: BenchLabProps<DressRehearsalVariant>) {
  // This tab may keep a newer draft than the server's page was made with: the evening waits to see.
  if (!useInBrowser()) {
    return (
      <div className="grid h-[calc(100dvh-7rem)] min-h-[26rem] place-items-center p-6">
        <p role="status">The evening is being laid out …</p>
      </div>
    );
  }
  return (
    <WithCatalogue version={props.variant.catalogueVersion}>
      {(catalogue) => <RehearsalWorkbench {...props} catalogue={catalogue} />}
    </WithCatalogue>
  );
}
