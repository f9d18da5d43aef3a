'use client';

import { useRef, useState } from 'react';
import {
  changed,
  redone,
  startHistory,
  undone,
  type WorkHistory,
} from '@/components/lab/bench/work-history';
import type { ClassGroups } from '@/lib/data/groups';
import { draftOf, nextGroupName, sameDraft, type DraftGroup, type GroupDraft } from './group-draft';

/** The groups being worked on, with the way back, and what of it is saved. */
export function useGroupWork(first: ClassGroups) {
  const [history, setHistory] = useState<WorkHistory<GroupDraft>>(() =>
    startHistory(draftOf(first)),
  );
  const [saved, setSaved] = useState<{ draft: GroupDraft; version: string }>({
    draft: history.draft,
    version: first.version,
  });
  const made = useRef(0);
  const { draft } = history;

  /** Of one group's typing, every letter but the first goes on with the same step. */
  const put = (next: GroupDraft, gesture: number | null = null): void =>
    setHistory(changed(history, next, gesture));

  return {
    draft,
    version: saved.version,
    isSaved: sameDraft(draft, saved.draft),
    canUndo: history.past.length > 0,
    canRedo: history.future.length > 0,
    put,
    undo: () => setHistory(undone(history)),
    redo: () => setHistory(redone(history)),
    add(count: number): void {
      let next = draft;
      for (let index = 0; index < count; index += 1) {
        made.current += 1;
        const key = `new-${made.current}`;
        const name = nextGroupName(next);
        const group = { groupId: null, kitId: null, studentIds: [], extensionCount: 0 };
        next = [...next, { key, name, ...group }];
      }
      put(next);
    },
    /** The server's ids go to every step, so that undo after a save still means the same groups. */
    keep(sent: GroupDraft, answer: ClassGroups): void {
      const idOf = new Map(answer.groups.map(({ name, groupId }) => [name, groupId]));
      const ids = new Map(
        sent.map((group) => [group.key, idOf.get(group.name.trim()) ?? group.groupId]),
      );
      const withId = (group: DraftGroup): DraftGroup => ({
        ...group,
        groupId: ids.get(group.key) ?? group.groupId,
      });
      setHistory((now) => ({
        ...now,
        draft: now.draft.map(withId),
        past: now.past.map((step) => step.map(withId)),
        future: now.future.map((step) => step.map(withId)),
      }));
      setSaved({ draft: sent, version: answer.version });
    },
  };
}
