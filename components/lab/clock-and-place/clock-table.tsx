'use client';

import { positionInWords } from '@/components/sky/position-words';
import { TableFrame } from '@/components/ui/table-frame';
import { CardPaper } from './card-paper';
import { shownSky, type ClockViewProps } from './clock-view';
import { missInWords } from './clock-words';
import { landingText } from './landing-list';
import type { Overlay } from './overlay-stars';
import type { TwoSkiesProps } from './two-skies';

/** The card and the two skies without any drawing: what is to be read, in words and numbers. */
export function ClockTable(props: ClockViewProps) {
  const { variant, draft } = props;
  const sky = shownSky(props);
  return (
    <div className="space-y-5">
      <CardPaper variant={variant} />
      {variant.declinationDeg === null ? null : (
        <p>
          The tube looks along{' '}
          <strong className="font-semibold">{String(draft.compassDeg ?? 0)}°</strong> on the
          compass. The needle stands at 0°; bearings count to the right.
        </p>
      )}
      <p>
        {sky.lead}
        {sky.overlay !== null && sky.shown === 'both'
          ? ` On the whole the two lie ${missInWords(sky.overlay.missDeg)} apart.`
          : ''}
      </p>
      {sky.overlay === null ? null : <StarTable overlay={sky.overlay} shown={sky.shown} />}
    </div>
  );
}

/** What the picture of the two skies shows, star by star. */
function StarTable({ overlay, shown }: { overlay: Overlay; shown: TwoSkiesProps['shown'] }) {
  const columns = {
    real: shown !== 'believed',
    tube: shown !== 'real',
    beside: shown === 'both',
  };
  return (
    <TableFrame caption="Bright stars, and where the mount would point for them" tall>
      <thead>
        <tr>
          <th scope="col">Star</th>
          {columns.real ? <th scope="col">It stands</th> : null}
          {columns.tube ? <th scope="col">The mount would point</th> : null}
          {columns.beside ? <th scope="col">Seen from the star</th> : null}
        </tr>
      </thead>
      <tbody>
        {overlay.stars
          .filter(({ judged }) => judged)
          .map((star) => (
            <tr key={star.name}>
              <th scope="row">{star.name}</th>
              {columns.real ? <td>{placeText(star.real)}</td> : null}
              {columns.tube ? <td>{placeText(star.tube)}</td> : null}
              {columns.beside ? <td>{landingText(star)}</td> : null}
            </tr>
          ))}
        <tr>
          <th scope="row">The pole</th>
          {columns.real ? <td>{poleText(overlay.pole.real)}</td> : null}
          {columns.tube ? <td>{poleText(overlay.pole.tube)}</td> : null}
          {columns.beside ? <td>–</td> : null}
        </tr>
      </tbody>
    </TableFrame>
  );
}

const placeText = ({ azimuthDeg, altitudeDeg }: Overlay['pole']['real']): string =>
  altitudeDeg < 0 ? 'into the ground' : positionInWords(azimuthDeg, altitudeDeg);

/** The pole in degrees: latitude is read off its height. */
const poleText = ({ altitudeDeg }: Overlay['pole']['real']): string =>
  altitudeDeg < 0 ? 'below the ground' : `${String(Math.round(altitudeDeg))}° high`;
