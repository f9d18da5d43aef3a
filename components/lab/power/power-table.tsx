'use client';

import { Button } from '@/components/ui/button';
import { TableFrame } from '@/components/ui/table-frame';
import { holderPlug } from '@/lib/power/power-bench';
import { isHolderClosed, isWired } from '@/lib/variants/bench/power/power-variant';
import { BaysTable } from './bays-table';
import { keepPlaceInRow } from './keep-place';
import { LooseCellsTable } from './loose-cells-table';
import { NightFigures } from './night-figures';
import { benchOf, perform, readoutOf, type PowerViewProps } from './power-play';
import { ampsText, centreText, computerWords, formNames, plugName, voltsText } from './power-words';
import { ProbesTable } from './probes-table';

/** The same bench in tables and buttons. */
export function PowerTable(props: PowerViewProps) {
  const { variant } = props;
  if (!isWired(variant)) return <NightFigures {...props} />;
  const { setup } = variant;
  return (
    <div className="space-y-6">
      {setup.supplies.length > 0 ? <Supplies {...props} /> : <BaysTable {...props} />}
      {setup.supplies.length > 0 || isHolderClosed(variant) ? null : <LooseCellsTable {...props} />}
      {isHolderClosed(variant) ? <ProbesTable {...props} /> : null}
      <Telescope {...props} />
    </div>
  );
}

function Supplies(props: PowerViewProps) {
  const { bench } = benchOf(props.variant, props.draft);
  return (
    <TableFrame caption="Supplies, as their labels say">
      <thead>
        <tr>
          <th scope="col">Supply</th>
          <th scope="col">What it is</th>
          <th scope="col" className="number">
            Volts
          </th>
          <th scope="col" className="number">
            At most
          </th>
          <th scope="col">Plug</th>
          <th scope="col">Do</th>
        </tr>
      </thead>
      <tbody>
        {props.variant.setup.supplies.map(({ id, form, volts, ratedA, centre }) => (
          <tr key={id}>
            <th scope="row" tabIndex={-1}>
              {id}
            </th>
            <td>{formNames[form]}</td>
            <td className="number">{volts} V</td>
            <td className="number">{ratedA} A</td>
            <td>{centreText(centre)}</td>
            <td>
              {bench.plugged === id ? (
                'plugged in'
              ) : (
                <Button
                  onClick={(event) => {
                    keepPlaceInRow(event);
                    perform(props, { do: 'plug', supply: id });
                  }}
                >
                  Plug in supply {id}
                </Button>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

function Telescope(props: PowerViewProps) {
  const { variant, draft } = props;
  const { needs, springEnds } = variant.setup;
  const { bench } = benchOf(variant, draft);
  const { volts, amps, computer, slewing, restarted } = readoutOf(variant, draft, bench);
  return (
    <section aria-labelledby="power-telescope" className="space-y-3">
      <h3 id="power-telescope" className="font-semibold">
        The telescope
      </h3>
      <p>
        Beside its socket stands: {needs.nominalV} V direct current, at most {needs.slewingA} A,{' '}
        {centreText(needs.centre)}. It starts afresh below {voltsText(needs.resetBelowV)}.
      </p>
      <p>
        The switch is {bench.on ? 'on' : 'off'}, the hand control{' '}
        {bench.handControl ? 'connected' : 'not connected'};{' '}
        {bench.plugged === null
          ? 'nothing is plugged in'
          : `plugged in is ${plugName(bench.plugged)}`}
        . Meter: {voltsText(volts)}, {ampsText(amps)}.{' '}
        {restarted
          ? 'The computer starts afresh: its alignment is lost.'
          : slewing
            ? 'Slewing at full speed.'
            : `${computerWords[computer]}.`}
      </p>
      <div className="flex flex-wrap gap-2">
        <Button
          onClick={() => {
            perform(props, { do: 'switch', on: !bench.on });
          }}
        >
          {bench.on ? 'Switch off' : 'Switch on'}
        </Button>
        <Button
          onClick={() => {
            perform(props, { do: 'hand-control', connected: !bench.handControl });
          }}
        >
          {bench.handControl ? 'Take the hand control off' : 'Connect the hand control'}
        </Button>
        {bench.plugged !== null || springEnds.length === 0 ? (
          <Button
            onClick={() => {
              perform(props, { do: 'unplug' });
            }}
          >
            {bench.plugged === null ? 'Unplug the supply' : `Unplug ${plugName(bench.plugged)}`}
          </Button>
        ) : (
          <Button
            onClick={() => {
              perform(props, { do: 'plug', supply: holderPlug });
            }}
          >
            Plug in the holder
          </Button>
        )}
        <Button
          onClick={() => {
            perform(props, { do: 'slew' });
          }}
        >
          Slew at full speed
        </Button>
      </div>
    </section>
  );
}
