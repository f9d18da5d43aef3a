'use client';

import { useState } from 'react';
import { SunCaution } from '@/components/ui/sun-caution';
import { SideSwitch, type BenchSide } from '../run/side-switch';
import { StartBench } from '../run/start-bench';
import { declinationInWords } from '../run/run-words';
import { useStartChoice } from '../run/start-choice';
import { StartControl } from './start-control';
import type { Evening } from './evening';
import { onlyStarted } from './rehearsal-work';
import { StageFrame, TableSpace } from './stage-frame';
import { StagePanel } from './stage-panel';
import { StartTable } from './start-table';

const hints = [
  'The needle shows magnetic north. True north lies a little to one side of it: the box says how far.',
  'Where the needle points east of true north, true north is to the left of the needle; west of it, to the right.',
  'The tube is laid first, then both clutches are locked. A clutch left loose lets the tube stay behind.',
];

/** The tube is turned to true north and tipped level with its clutches loose; then they are locked. */
export function StartStage({ evening }: { evening: Evening }) {
  const { variant, draft } = evening;
  const { declinationDeg } = variant.telescope;
  const start = useStartChoice(declinationDeg);
  const [side, setSide] = useState<BenchSide>('above');
  const { log } = draft;
  const laid = log.some((action) => action.do === 'set-start');
  return (
    <StageFrame
      evening={evening}
      viewLabel="How to look at the telescope"
      drawingName="Telescope"
      scene={
        evening.view === 'drawing' ? (
          <div className="on-sky relative flex size-full flex-col">
            <div className="min-h-0 flex-1">
              <StartBench start={start} tubeType={variant.kit.tubeType} shown={side} />
            </div>
            <div className="p-2 lg:hidden">
              <SideSwitch side={side} onChange={setSide} />
            </div>
          </div>
        ) : (
          <TableSpace>
            <StartTable evening={evening} declinationDeg={declinationDeg} />
          </TableSpace>
        )
      }
      controls={<StartControl evening={evening} start={start} laid={laid} />}
      summary={
        !laid
          ? 'The tube hangs loose'
          : draft.clutchesLocked
            ? 'Laid, clutches locked'
            : 'Laid, clutches loose'
      }
      panel={
        <StagePanel evening={evening} stage="start-position" hints={hints}>
          <p>
            This mount wants to start with its tube level and facing true north. Turn the tube over
            the compass, tip it until the bubble stands in the middle, then lock both clutches.
          </p>
          <p className="rounded-md bg-sunken p-3 text-sm">
            {declinationInWords(declinationDeg, variant.scenario.place.latitudeDeg)}
          </p>
          {onlyStarted(log) ? null : (
            <p className="border-s-4 border-caution ps-3 text-sm">
              An alignment is under way. Laying the tube anew, or loosing a clutch, begins it again.
            </p>
          )}
          <SunCaution short />
        </StagePanel>
      }
    />
  );
}
