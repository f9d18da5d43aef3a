'use client';

import { useState } from 'react';
import { SideView } from '@/components/telescope/side-view';
import { holderPlug, loose } from '@/lib/power/power-bench';
import { isHolderClosed, isWired, nightOf } from '@/lib/variants/bench/power/power-variant';
import { ClosedHolderFigure } from './closed-holder-figure';
import { HandFigure } from './hand-figure';
import { HolderFigure } from './holder-figure';
import { HolderPlug } from './holder-plug';
import { LooseCells, lyingWay } from './loose-cells';
import { MeterFigure } from './meter-figure';
import { meterShows } from './meter-shows';
import { NightFigure } from './night-figure';
import { benchOf, perform, readoutOf, type PowerViewProps } from './power-play';
import { ReadingsFigure } from './readings-figure';
import { SupplyCards } from './supply-cards';
import { TelescopePlate } from './telescope-plate';
import { useCellHand } from './use-cell-hand';
import { useLayout } from './use-layout';
import { HandWire, SupplyWire } from './wires';

/** The bench from above: what gives the power on one side, what takes it on the other. */
export function PowerDrawing(props: PowerViewProps) {
  const { variant, draft, change } = props;
  const { setup } = variant;
  const layout = useLayout();
  const { bench } = benchOf(variant, draft);
  const readout = readoutOf(variant, draft, bench);
  const night = nightOf(variant);
  const [blackStud, setBlackStud] = useState<number | null>(null);
  const hand = useCellHand({
    layout,
    bays: bench.bays.length,
    onDrop: (cell, bay) => {
      perform(props, { do: 'put', cell, bay, plusEnd: lyingWay(setup.cells, cell) });
    },
  });
  const heldCell = setup.cells.find(({ id }) => id === hand.held);
  const hasHolder = bench.bays.length > 0;
  const wired = isWired(variant);
  const still = (): void => {
    change(draft, 'Tonight is worked out on paper first: nothing is switched on here.');
  };
  const does = (action: Parameters<typeof perform>[1]) => (): void => {
    if (wired) perform(props, action);
    else still();
  };
  const plugIn = (supply: string): void => {
    perform(props, bench.plugged === supply ? { do: 'unplug' } : { do: 'plug', supply });
  };

  const onBay = (bay: number): void => {
    if (!wired) still();
    else if (bench.bays[bay]?.put) perform(props, { do: 'turn', bay });
    else if (hand.held === null) change(draft, 'Take a cell up first, then choose its bay.');
    else {
      const cell = hand.held;
      hand.letGo();
      perform(props, { do: 'put', cell, bay, plusEnd: lyingWay(setup.cells, cell) });
    }
  };
  const onStud = (stud: number): void => {
    if (blackStud === null) {
      setBlackStud(stud);
      change(draft, `The black probe is on stud ${String(stud)}. Now the red one.`);
      return;
    }
    setBlackStud(null);
    perform(props, { do: 'read', red: stud, black: blackStud });
  };
  const last = bench.readings.at(-1);
  const probes =
    blackStud !== null
      ? { red: null, black: blackStud }
      : { red: last?.red ?? null, black: last?.black ?? null };

  const supplyWire = (
    <SupplyWire
      layout={layout}
      supplies={setup.supplies}
      plugged={bench.plugged}
      bays={bench.bays.length}
      amps={readout.amps}
    />
  );

  const plate = (
    <TelescopePlate
      layout={layout}
      needs={setup.needs}
      bench={bench}
      readout={readout}
      onSocket={() => {
        if (!wired) still();
        else if (bench.plugged !== null) perform(props, { do: 'unplug' });
        else if (hasHolder) perform(props, { do: 'plug', supply: holderPlug });
        else change(draft, 'Choose a supply: its plug goes in here.');
      }}
      onSwitch={does({ do: 'switch', on: !bench.on })}
      onHandSocket={does({ do: 'hand-control', connected: !bench.handControl })}
    />
  );

  return (
    <div className="on-sky flex size-full items-center justify-center overflow-hidden">
      <svg
        viewBox={`0 0 ${String(layout.width)} ${String(layout.height)}`}
        className="block size-full select-none"
        role="group"
        aria-label="The bench"
      >
        {layout.telescope === null ? null : (
          <g transform={`translate(${String(layout.telescope.x)} ${String(layout.telescope.y)})`}>
            <SideView kind={variant.tubeType} altitudeDeg={readout.slewing ? 48 : 20} />
          </g>
        )}
        {!hasHolder ? null : isHolderClosed(variant) ? (
          <ClosedHolderFigure
            layout={layout}
            bays={bench.bays}
            probes={probes}
            onStud={onStud}
            onTurn={(bay) => {
              perform(props, { do: 'turn', bay });
            }}
          />
        ) : (
          <HolderFigure
            layout={layout}
            bays={bench.bays}
            held={hand.held}
            onBay={onBay}
            onLift={
              wired
                ? (bay) => {
                    perform(props, { do: 'take', bay });
                  }
                : null
            }
          />
        )}
        {/* Over the plate and under the cards, so that no label is crossed by it. */}
        {hasHolder ? null : plate}
        {hasHolder ? null : supplyWire}
        <SupplyCards
          layout={layout}
          supplies={setup.supplies}
          plugged={bench.plugged}
          onPlug={plugIn}
        />
        {hasHolder ? (
          <HolderPlug
            layout={layout}
            bays={bench.bays.length}
            isIn={bench.plugged === holderPlug}
            onPress={
              wired
                ? () => {
                    plugIn(holderPlug);
                  }
                : still
            }
          />
        ) : null}
        {hasHolder ? plate : null}
        <HandFigure layout={layout} slewing={readout.slewing} onSlew={does({ do: 'slew' })} />
        {hasHolder ? supplyWire : null}
        <HandWire layout={layout} isIn={bench.handControl} amps={readout.amps} />
        {night === null ? (
          <MeterFigure
            layout={layout}
            {...meterShows({
              variant,
              heldCell,
              probes,
              lastVolts: last?.volts ?? null,
              isPlugged: bench.plugged !== null,
              readout,
            })}
          />
        ) : (
          <NightFigure
            x={layout.tray.x}
            y={layout.tray.y - 10}
            width={Math.min(540, layout.width - 2 * layout.tray.x)}
            night={night}
            runTimeHours={draft.runTimeHours}
            slewingVolts={draft.slewingVolts}
          />
        )}
        {isHolderClosed(variant) ? (
          <ReadingsFigure layout={layout} readings={bench.readings} />
        ) : null}
        <LooseCells
          layout={layout}
          cells={setup.cells}
          loose={hasHolder ? loose(setup, bench) : []}
          hand={hand}
        />
      </svg>
    </div>
  );
}
