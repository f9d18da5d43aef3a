'use client';

import { positionInWords } from '@/components/sky/position-words';
import { TableFrame } from '@/components/ui/table-frame';
import { CardPaper } from './card-paper';
import { shownSky, type ClockViewProps } from './clock-view';
import { missInWords } from './clock-words';
import { landingText } from './landing-list';

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
          ? ` The mount’s sky lies ${missInWords(sky.overlay.missDeg)} beside the real one.`
          : ''}
      </p>
      {sky.overlay === null ? null : (
        <TableFrame caption="Bright stars, and where the mount would point for them" tall>
          <thead>
            <tr>
              <th scope="col">Star</th>
              {sky.shown === 'both' ? <th scope="col">It stands</th> : null}
              <th scope="col">The mount would point</th>
              {sky.shown === 'both' ? <th scope="col">Seen from the star</th> : null}
            </tr>
          </thead>
          <tbody>
            {sky.overlay.stars
              .filter(({ judged }) => judged)
              .map((star) => (
                <tr key={star.name}>
                  <th scope="row">{star.name}</th>
                  {sky.shown === 'both' ? (
                    <td>{positionInWords(star.real.azimuthDeg, star.real.altitudeDeg)}</td>
                  ) : null}
                  <td>
                    {star.tube.altitudeDeg < 0
                      ? 'into the ground'
                      : positionInWords(star.tube.azimuthDeg, star.tube.altitudeDeg)}
                  </td>
                  {sky.shown === 'both' ? <td>{landingText(star)}</td> : null}
                </tr>
              ))}
            <tr>
              <th scope="row">The pole</th>
              {sky.shown === 'both' ? <td>{poleText(sky.overlay.pole.real)}</td> : null}
              <td>{poleText(sky.overlay.pole.tube)}</td>
              {sky.shown === 'both' ? <td>–</td> : null}
            </tr>
          </tbody>
        </TableFrame>
      )}
    </div>
  );
}

/** The pole in degrees: latitude is read off its height. */
const poleText = ({ altitudeDeg }: { altitudeDeg: number }): string =>
  altitudeDeg < 0 ? 'below the ground' : `${String(Math.round(altitudeDeg))}° high`;
