'use client';

import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import { mmText } from './balance-words';
import type { TubeHand } from './use-tube-hand';

type PartsListProps = { variant: BalanceVariant } & TubeHand;

/** Everything that can be on the tube: a tick puts it on. Masses and places where they are told. */
export function PartsList({ variant, state, act }: PartsListProps) {
  const { tube, parts, needed, weightsTold, template } = variant;
  const heights = template === 'raised';
  return (
    <div className="table-frame overflow-x-auto">
      <table>
        <caption className="px-3 py-2 text-start text-sm text-soft">
          {weightsTold
            ? 'On the tube (ticked) and beside it. Places are on the tape; it counts towards the back.'
            : 'On the tube (ticked) and beside it. Nobody has weighed this one.'}
        </caption>
        <thead>
          <tr>
            <th scope="col">Part</th>
            {weightsTold ? (
              <>
                <th scope="col" className="number">
                  Mass
                </th>
                <th scope="col" className="number">
                  At
                </th>
              </>
            ) : null}
            {heights ? (
              <th scope="col" className="number">
                Above axis
              </th>
            ) : null}
          </tr>
        </thead>
        <tbody>
          {[{ ...tube, id: 'tube', name: 'bare tube' }, ...parts].map((part) => (
            <tr key={part.id}>
              <th scope="row">
                {part.id === 'tube' ? (
                  part.name
                ) : (
                  <PartTick
                    name={part.name}
                    needed={needed.includes(part.id)}
                    on={state.on.includes(part.id)}
                    onChange={(on) => {
                      act({ do: 'part', id: part.id, on });
                    }}
                  />
                )}
              </th>
              {weightsTold ? (
                <>
                  <td className="number whitespace-nowrap">{part.massKg.toFixed(2)} kg</td>
                  <td className="number whitespace-nowrap">{mmText(part.alongMm)}</td>
                </>
              ) : null}
              {heights ? (
                <td className="number whitespace-nowrap">{signedMm(part.aboveAxisMm)}</td>
              ) : null}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const signedMm = (mm: number): string =>
  `${mm < 0 ? '−' : ''}${Math.abs(mm).toFixed(mm % 1 === 0 ? 0 : 1)} mm`;

type PartTickProps = {
  name: string;
  needed: boolean;
  on: boolean;
  onChange: (on: boolean) => void;
};

function PartTick({ name, needed, on, onChange }: PartTickProps) {
  return (
    <label className="flex min-h-(--target-small) items-start gap-2 font-normal">
      <input
        type="checkbox"
        checked={on}
        onChange={(event) => {
          onChange(event.target.checked);
        }}
        className="tick-box mt-0.5 size-[1.45rem] shrink-0 appearance-none rounded-md border"
      />
      <span>
        {name}
        {needed ? <span className="block text-sm text-soft">used tonight</span> : null}
      </span>
    </label>
  );
}
