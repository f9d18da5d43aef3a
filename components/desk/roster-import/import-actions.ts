import type { Result } from '@/lib/data/result';
import type { ImportOutcome, RosterPreview } from '@/lib/data/roster-import';
import type { ImportUndo, RosterList } from '@/lib/data/roster-import-input';

/** What the server does for an import. */
export type ImportActions = {
  preview: (list: RosterList) => Promise<Result<RosterPreview>>;
  commit: (list: RosterList, fingerprint: string) => Promise<Result<ImportOutcome>>;
  takeBack: (undo: ImportUndo) => Promise<Result<null>>;
};
