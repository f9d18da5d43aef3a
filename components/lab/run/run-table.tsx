'use client';

import type { RunModel } from './run-model';
import { useRunSnapshot } from './use-run-lab';

/** The run without a picture. */
export function RunTable({ model }: { model: RunModel }) {
  const { said } = useRunSnapshot(model);
  return <p className="p-4">{said}</p>;
}
