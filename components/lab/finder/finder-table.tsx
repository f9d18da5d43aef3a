'use client';

import { TableFrame } from '@/components/ui/table-frame';
import { arcminuteInWords } from '@/components/sky/angle-words';
import { wayRoundInWords } from '../run/run-words';
import { EyepieceControls } from './eyepiece-controls';
import { finderHand, type FinderProps } from './finder-hand';
import { aimsNow } from './finder-work';
import {
  eyepieceInWords,
  eyepieceName,
  finderInWords,
  fromSunInWords,
  metresInWords,
  placeInWords,
  wayInWords,
} from './finder-words';
import { capitalised } from '@/lib/wording/capital';
import { ScrewSteps } from './screw-steps';
import { TurnTo } from './turn-to';

/** The same bench without a drawing: places as an eye would judge them, moves as steps and numbers. */
export function FinderTable(props: FinderProps) {
  const { variant } = props;
  const { state } = finderHand(props);
  const { kitName, orientation } = variant;
  const tubeFromSun = fromSunInWords(variant, state, state.tube);
  return (
    <div className="space-y-6">
      <section aria-labelledby="finder-scene" className="space-y-2">
        <h2 id="finder-scene" className="text-base font-semibold">
          Things in sight
        </h2>
        <TableFrame caption="Things in sight" captionHidden tall>
          <thead>
            <tr>
              <th scope="col">Name</th>
              <th scope="col">Distance</th>
              <th scope="col">Where</th>
              {state.dusk ? null : <th scope="col">Sun</th>}
            </tr>
          </thead>
          <tbody>
            {aimsNow(variant, state).map((aim) => (
              <tr key={aim.id}>
                <th scope="row">{capitalised(aim.name)}</th>
                <td>{aim.distanceM === null ? 'in the sky' : metresInWords(aim.distanceM)}</td>
                <td>{placeInWords(aim)}</td>
                {state.dusk ? null : (
                  <td>
                    {capitalised(fromSunInWords(variant, state, aim))};{' '}
                    {wayInWords(variant, state, aim)}
                  </td>
                )}
              </tr>
            ))}
          </tbody>
        </TableFrame>
      </section>
      <section aria-labelledby="finder-tube" className="space-y-2">
        <h2 id="finder-tube" className="text-base font-semibold">
          The tube
        </h2>
        <p>
          It points {placeInWords(state.tube)}
          {tubeFromSun === '' ? '' : `, ${tubeFromSun}`}. The caps are {state.capsOn ? 'on' : 'off'}
          .
        </p>
        <TurnTo {...props} />
      </section>
      <section aria-labelledby="finder-eyepiece" className="space-y-2">
        <h2 id="finder-eyepiece" className="text-base font-semibold">
          In the eyepiece, {eyepieceName(variant, state.eyepiece)}
        </h2>
        <p className="max-w-measure text-sm text-soft">
          {wayRoundInWords('eyepiece', { name: kitName, orientation })}. Twelve o’clock is the top
          of the view.
        </p>
        <p>{eyepieceInWords(variant, state, aimsNow(variant, state))}</p>
        <div className="flex">
          <EyepieceControls {...props} />
        </div>
      </section>
      <section aria-labelledby="finder-window" className="space-y-2">
        <h2 id="finder-window" className="text-base font-semibold">
          In the finder
        </h2>
        <p className="max-w-measure text-sm text-soft">
          Upright, no magnification. {arcminuteInWords} The red dot covers about 2′.
        </p>
        <p>{finderInWords(variant, state)}</p>
        <ScrewSteps {...props} screw={0} />
        <ScrewSteps {...props} screw={1} />
      </section>
    </div>
  );
}
