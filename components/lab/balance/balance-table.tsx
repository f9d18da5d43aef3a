'use client';

import { tubeInClamp } from '@/lib/balance/tube-in-clamp';
import { torqueNm } from '@/lib/balance/torque';
import { degText, mmText, movesWords, torqueText } from './balance-words';
import { knowsCurve } from './live-plot';
import { StepField } from './step-field';
import { TubeControls } from './tube-controls';
import { useTubeHand, type BalanceViewProps } from './use-tube-hand';

/** The same bench in words and numbers: controls, what letting go has shown, and in practice the torques. */
export function BalanceTable(props: BalanceViewProps) {
  const { variant, mode } = props;
  const hand = useTubeHand(props);
  const { state, act } = hand;
  return (
    <div className="max-w-3xl space-y-6">
      <TubeControls {...hand} />
      <div className="table-frame">
        <table>
          <caption className="sr-only">How the tube stands</caption>
          <tbody>
            {[
              ['Hand', state.handOn ? 'under the tube' : 'away'],
              ['Clamp', state.clampOpen ? 'open' : 'locked'],
              ['Stop screw', state.stopIn ? 'in' : 'out'],
              ['Clamp grips at', mmText(state.clampMm)],
              ['Altitude', degText(state.altitudeDeg)],
            ].map(([name, value]) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td>{value}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div className="grid gap-6 sm:grid-cols-2">
        <StepField
          label="Slide until the clamp is at"
          unit="mm"
          steps={[-10, -1, 1, 10]}
          value={state.clampMm}
          onSet={(toMm) => {
            act({ do: 'slide', toMm });
          }}
        />
        <StepField
          label="Raise the tube to"
          unit="°"
          steps={[-10, 10]}
          value={Math.max(0, Math.min(90, state.altitudeDeg))}
          onSet={(deg) => {
            act({ do: 'tip', toDeg: Math.max(0, Math.min(90, deg)) });
          }}
        />
      </div>
      <p className="text-sm text-soft">
        A greater number slides the tube forward: more of it lies in front of the clamp.
      </p>
      <Trials {...hand} />
      {knowsCurve(variant, state, mode) ? <Torques {...props} /> : null}
    </div>
  );
}

/** The latest first; those of the tube as it is now say so. */
function Trials({ state }: ReturnType<typeof useTubeHand>) {
  return (
    <div className="table-frame overflow-x-auto">
      <table>
        <caption className="px-3 py-2 text-start text-sm text-soft">
          {state.trials.length === 0
            ? 'Let go of the tube, and what it does is written down here.'
            : 'What it did when you let go, the latest first.'}
        </caption>
        {state.trials.length === 0 ? null : (
          <>
            <thead>
              <tr>
                <th scope="col">Clamp at</th>
                <th scope="col">Let go at</th>
                <th scope="col">What it did</th>
                <th scope="col">The tube since</th>
              </tr>
            </thead>
            <tbody>
              {state.trials
                .map((trial, index) => (
                  <tr key={index}>
                    <td>{mmText(trial.clampMm)}</td>
                    <td>{degText(trial.altitudeDeg)}</td>
                    <td>
                      {movesWords[trial.moves]}
                      {trial.moves === 'holds' ? '' : `, to ${degText(trial.restDeg)}`}
                    </td>
                    <td>{trial.arrangement === state.arrangement ? 'as it was' : 'changed'}</td>
                  </tr>
                ))
                .reverse()}
            </tbody>
          </>
        )}
      </table>
    </div>
  );
}

/** What the plot draws. */
function Torques(props: BalanceViewProps) {
  const { variant } = props;
  const { state } = useTubeHand(props);
  const tube = tubeInClamp(variant, state);
  return (
    <div className="table-frame overflow-x-auto">
      <table>
        <caption className="px-3 py-2 text-start text-sm text-soft">
          Torque as it is now. The clutch holds {torqueText(variant.holdingTorqueNm)}.
        </caption>
        <thead>
          <tr>
            <th scope="col" className="number">
              Altitude
            </th>
            <th scope="col" className="number">
              Torque
            </th>
            <th scope="col">What it does</th>
          </tr>
        </thead>
        <tbody>
          {[0, 15, 30, 45, 60, 75, 90].map((deg) => {
            const torque = torqueNm(tube, deg);
            const holds = Math.abs(torque) <= variant.holdingTorqueNm;
            const end = torque > 0 ? 'front' : 'back';
            return (
              <tr key={deg}>
                <th scope="row" className="number">
                  {deg}°
                </th>
                <td className="number">{torqueText(torque)}</td>
                <td>{movesWords[holds ? 'holds' : end]}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
