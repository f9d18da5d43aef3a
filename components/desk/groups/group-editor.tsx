'use client';

import { useEffect, useState, useTransition } from 'react';
import { useUndoKeys } from '@/components/lab/bench/use-undo-keys';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import { PrintButton } from '@/components/ui/print-button';
import { StatusLine } from '@/components/ui/status-line';
import type { ClassGroups, GroupsInput } from '@/lib/data/groups';
import type { Problem, Result } from '@/lib/data/result';
import { GroupCard, type Telescope } from './group-card';
import { aloneIn, dealt, everybodyIn, moved, type DraftGroup } from './group-draft';
import { GroupLists } from './group-lists';
import { StudentChips } from './student-chips';
import { useGroupWork } from './use-group-work';

/** As many as a class set of telescopes, where nothing is known of the class. */
const usualGroups = 6;

/** Makes groups and puts students into them; nothing is kept until it is saved, and undo goes back past that. */
export function GroupEditor({
  groups,
  telescopes,
  save,
}: {
  groups: ClassGroups;
  telescopes: readonly Telescope[];
  save: (input: GroupsInput) => Promise<Result<ClassGroups>>;
}) {
  const everybody = everybodyIn(groups);
  const work = useGroupWork(groups);
  const { draft } = work;
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const [said, setSaid] = useState('');
  const [problem, setProblem] = useState<Problem | null>(null);
  const [busy, start] = useTransition();
  useUndoKeys(work);

  useEffect(() => {
    if (work.isSaved) return;
    const warn = (event: BeforeUnloadEvent): void => event.preventDefault();
    window.addEventListener('beforeunload', warn);
    return () => window.removeEventListener('beforeunload', warn);
  }, [work.isSaved]);

  const alone = aloneIn(draft, everybody);
  const studentsOf = ({ studentIds }: DraftGroup) =>
    everybody.filter(({ studentId }) => studentIds.includes(studentId));
  const toggle = (studentId: string): void => {
    const next = new Set(chosen);
    if (!next.delete(studentId)) next.add(studentId);
    setChosen(next);
  };
  function putInto(key: string | null, name: string): void {
    work.put(moved(draft, [...chosen], key));
    setSaid(`${chosen.size} put into ${name}.`);
    setChosen(new Set());
  }
  function deal(whom: 'everybody' | 'the-rest'): void {
    const next = dealt(draft, everybody, whom);
    work.put(next);
    setChosen(new Set());
    const sizes = next.map(({ studentIds }) => studentIds.length).join(', ');
    setSaid(`Dealt out: ${sizes}. Undo takes it back.`);
  }
  const change = (index: number, part: Partial<DraftGroup>): void =>
    work.put(
      draft.map((group, place) => (place === index ? { ...group, ...part } : group)),
      part.name === undefined ? null : index + 1,
    );
  function remove(group: DraftGroup): void {
    work.put(draft.filter(({ key }) => key !== group.key));
    const lost =
      group.extensionCount === 0
        ? ''
        : ` When you save, the later due time it was given in ${group.extensionCount} ${group.extensionCount === 1 ? 'assignment' : 'assignments'} goes with it.`;
    setSaid(`${group.name} deleted; its students are in no group now.${lost} Undo takes it back.`);
  }
  function store(): void {
    const sent = draft;
    start(async () => {
      try {
        const answer = await save({
          version: work.version,
          groups: sent.map(({ groupId, name, kitId, studentIds }) => ({
            groupId,
            name,
            kitId,
            studentIds: [...studentIds],
          })),
        });
        setProblem(answer.ok ? null : answer.problem);
        if (answer.ok) {
          work.keep(sent, answer.value);
          setSaid('Saved.');
        }
      } catch {
        setProblem({
          code: 'unreachable',
          message: 'The server did not answer. Nothing is lost here: save again.',
        });
      }
    });
  }

  return (
    <>
      <div className="space-y-5 print:hidden">
        <div className="sticky top-0 z-20 -mx-1 flex flex-wrap items-center gap-2 bg-page px-1 py-2">
          <Button variant="primary" busy={busy} disabled={work.isSaved} onClick={store}>
            Save
          </Button>
          <Button disabled={!work.canUndo} onClick={work.undo}>
            Undo
          </Button>
          <Button disabled={!work.canRedo} onClick={work.redo}>
            Redo
          </Button>
          <PrintButton>Print the lists</PrintButton>
          <StatusLine className="w-full sm:ms-2 sm:w-auto">
            {busy ? 'Saving…' : `${said}${work.isSaved ? '' : ' Not saved yet.'}`}
          </StatusLine>
        </div>
        {problem === null ? null : <Notice tone="danger" live="alert" title={problem.message} />}
        <div className="flex flex-wrap gap-2">
          <Button onClick={() => work.add(1)}>Add a group</Button>
          {draft.length === 0 ? (
            <Button onClick={() => work.add(usualGroups)}>Add {usualGroups} groups</Button>
          ) : (
            <>
              <Button disabled={alone.length === 0} onClick={() => deal('the-rest')}>
                Deal out those in no group
              </Button>
              <Button onClick={() => deal('everybody')}>Deal everybody out anew</Button>
            </>
          )}
        </div>
        <section
          aria-labelledby="in-no-group"
          className="space-y-3 border border-dashed border-strong p-4"
        >
          <h3 id="in-no-group" className="text-lg font-semibold">
            In no group{alone.length === 0 ? '' : `: ${alone.length}`}
          </h3>
          {alone.length === 0 ? (
            <p className="text-sm text-soft">Everybody is in a group.</p>
          ) : (
            <StudentChips students={alone} chosen={chosen} toggle={toggle} />
          )}
          {draft.length === 0 ? null : (
            <Button disabled={chosen.size === 0} onClick={() => putInto(null, 'no group')}>
              {chosen.size === 0 ? 'Take out of their group' : `Take ${chosen.size} out`}
            </Button>
          )}
        </section>
        <div className="grid items-start gap-4 md:grid-cols-2 xl:grid-cols-3">
          {draft.map((group, index) => (
            <GroupCard
              key={group.key}
              group={group}
              students={studentsOf(group)}
              telescopes={telescopes}
              chosen={chosen}
              nameProblem={problem?.field === `groups.${index}.name` ? problem.message : null}
              change={(part) => change(index, part)}
              toggle={toggle}
              putHere={() => putInto(group.key, group.name)}
              remove={() => remove(group)}
            />
          ))}
        </div>
      </div>
      <div className="hidden print:block">
        <GroupLists
          groups={draft.map((group) => ({
            key: group.key,
            name: group.name,
            telescope: telescopes.find(({ id }) => id === group.kitId)?.name ?? null,
            students: studentsOf(group),
          }))}
          withoutGroup={alone}
        />
      </div>
    </>
  );
}
