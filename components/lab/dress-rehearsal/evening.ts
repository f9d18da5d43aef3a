import type { ReactNode } from 'react';
import type { DressRehearsalDraft } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-submission';
import type { RehearsalStage } from '@/lib/rehearsal/stages';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import type { StageChange } from './rehearsal-work';

/** What every stage of the evening is given. */
export type Evening = {
  variant: DressRehearsalVariant;
  catalogue: StarCatalogue;
  mode: 'practice' | 'check';
  /** How many hints are offered; none in a check. */
  hintLevels: number;
  /** Above the task: which attempt it is. */
  about: ReactNode;
  draft: DressRehearsalDraft;
  /** Something was done at a stage; the status line says so, and when an alignment is lost by it. */
  work: (stage: RehearsalStage, change: StageChange, said?: string) => void;
  goTo: (stage: RehearsalStage) => void;
  /** Whether the learner has gone from one stage to another since the page was opened. */
  arrived: boolean;
  /** Says something without anything having been done. */
  tell: (said: string) => void;
  said: string;
  view: 'drawing' | 'table';
  onView: (view: 'drawing' | 'table') => void;
  sheetOpen: boolean;
  onSheetOpen: (open: boolean) => void;
};
