import type { RunVariant } from '@/lib/variants/run-variant';

/** What the view of a result draws again of its run: of a stored variant and of a lab's alike. */
export type DebriefSky = Pick<RunVariant, 'scenario' | 'frame' | 'kit' | 'givenHip' | 'proposals'>;
