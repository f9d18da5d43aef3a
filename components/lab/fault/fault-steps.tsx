'use client';

import type { ReactNode } from 'react';
import { useEffect, useRef, useState } from 'react';
import { Button } from '@/components/ui/button';
import { RadioGroup } from '@/components/ui/radio-group';
import type { CureId, FaultId } from '@/lib/faults/fault-ids';
import { cureWords } from './cure-words';
import { faultGroups, faultWords } from './fault-words';
import type { FaultLabModel } from './use-fault-lab';

/** A step's heading; it takes the focus when the step begins, since the button before it is gone. */
function StepHeading({ children, first = false }: { children: ReactNode; first?: boolean }) {
  const heading = useRef<HTMLHeadingElement>(null);
  // As it was when the step began: a choice made in it must not take the focus off what was chosen.
  const [quiet] = useState(first);
  useEffect(() => {
    if (!quiet) heading.current?.focus();
  }, [quiet]);
  return (
    <h3 ref={heading} tabIndex={-1} className="font-semibold focus-visible:outline-none">
      {children}
    </h3>
  );
}

/** From here on headings help to find one; with fewer they are in the way. */
const headingsFrom = 10;

type Group = { title: string | null; faults: readonly FaultId[] };

/** What is offered, always in the same order: where a fault stands in the list tells nothing. */
function groupsOf(offered: readonly FaultId[]): readonly Group[] {
  const groups = faultGroups
    .map(({ title, faults }) => ({ title, faults: faults.filter((id) => offered.includes(id)) }))
    .filter(({ faults }) => faults.length > 0);
  return offered.length < headingsFrom
    ? [{ title: null, faults: groups.flatMap(({ faults }) => faults) }]
    : groups;
}

/** The faults by what an evening goes through; one choice over all the lists. */
export function NameTheFault({ lab }: { lab: FaultLabModel }) {
  const { view, choice, said } = lab;
  const { fault } = choice.draft;
  return (
    <section className="space-y-4">
      <StepHeading first={choice.past.length === 0 && fault === null && said === ''}>
        Which fault fits all of it?
      </StepHeading>
      {groupsOf(view.faults).map(({ title, faults }) => (
        <RadioGroup<FaultId | ''>
          key={title ?? 'all'}
          legend={<span className="text-sm text-soft">{title ?? 'The faults'}</span>}
          legendHidden={title === null}
          name="fault"
          options={faults.map((id) => ({
            value: id,
            label: faultWords[id].name,
            hint: faultWords[id].line,
          }))}
          value={fault ?? ''}
          onValueChange={(id) => {
            if (id !== '') lab.nameFault(id);
          }}
        />
      ))}
      {fault === null ? null : (
        <Button variant="primary" size="large" className="w-full" onClick={lab.goOn}>
          That is the fault
        </Button>
      )}
    </section>
  );
}

export function NameTheCure({ lab }: { lab: FaultLabModel }) {
  const { view, choice } = lab;
  const { fault, cure } = choice.draft;
  return (
    <section className="space-y-4">
      <StepHeading>What puts it right?</StepHeading>
      {fault === null ? null : (
        <p className="text-sm text-soft">You named: {faultWords[fault].name}.</p>
      )}
      <RadioGroup<CureId | ''>
        legend="The cure"
        legendHidden
        name="cure"
        options={view.cures.map((id) => ({
          value: id,
          label: cureWords[id].name,
          hint: cureWords[id].line,
        }))}
        value={cure ?? ''}
        onValueChange={(id) => {
          if (id !== '') lab.nameCure(id);
        }}
      />
      {cure === null ? null : (
        <Button variant="primary" size="large" className="w-full" onClick={lab.goOn}>
          That is the cure
        </Button>
      )}
    </section>
  );
}
