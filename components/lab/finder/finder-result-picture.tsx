import type { FinderResult } from '@/lib/grading/bench/finder/finder-result';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import { eyepieceName } from './finder-words';
import { pathOf, sceneBottom, sceneHalfWidth, sceneTop, toScene } from './scene-places';
import { ScenePicture } from './scene-picture';

type PictureProps = { variant: FinderVariant; result: FinderResult };

/** Where a star under the dot sits beside the tube, and the ways the tube took. */
export function FinderResultPicture({ variant, result }: PictureProps) {
  return (
    <div className="grid gap-4 md:grid-cols-[minmax(0,18rem)_minmax(0,1fr)]">
      <DotAndFields variant={variant} result={result} />
      <WaysTaken variant={variant} result={result} />
    </div>
  );
}

function DotAndFields({ variant, result }: PictureProps) {
  const { low, high } = variant.eyepieces;
  const reach =
    1.15 * Math.max(low.radiusArcmin, Math.hypot(result.dot.rightArcmin, result.dot.upArcmin));
  const scale = 100 / reach;
  const x = result.dot.rightArcmin * scale;
  const y = -result.dot.upArcmin * scale;
  return (
    <figure>
      <svg
        viewBox="-106 -106 212 212"
        role="img"
        aria-label="The views of both eyepieces on the sky, and where a star under the dot sits."
        className="on-sky block w-full"
      >
        {[low, high].map(({ focalLengthMm, radiusArcmin }, i) => (
          <g key={i}>
            <circle
              r={radiusArcmin * scale}
              fill="none"
              stroke="var(--sky-line)"
              strokeWidth="1.6"
              strokeDasharray={i === 0 ? undefined : '5 3'}
            />
            <text
              y={radiusArcmin * scale - 4}
              textAnchor="middle"
              fontSize="10"
              fill="var(--on-sky)"
            >
              {`${String(focalLengthMm)} mm`}
            </text>
          </g>
        ))}
        <path d="M-6 0 H6 M0 -6 V6" stroke="var(--on-sky-soft)" strokeWidth="1.2" />
        <circle cx={x} cy={y} r="3.4" fill="var(--sky-lamp)" stroke="var(--land-near)" />
        <circle cx={x} cy={y} r="8" fill="none" stroke="var(--sky-lamp)" strokeWidth="1.2" />
      </svg>
      <figcaption className="mt-1 text-sm text-soft">
        As the sky has it. Cross: where the tube points. Ring: the star under the dot. Whole line:
        the view of the {eyepieceName(variant, 'low')} eyepiece; broken line:{' '}
        {eyepieceName(variant, 'high')}.
      </figcaption>
    </figure>
  );
}

function WaysTaken({ variant, result }: PictureProps) {
  const dusk = variant.day === null;
  const { middleAzimuthDeg } = variant;
  return (
    <figure>
      <svg
        viewBox={`${String(-sceneHalfWidth)} ${String(sceneTop)} ${String(2 * sceneHalfWidth)} ${String(sceneBottom - sceneTop)}`}
        role="img"
        aria-label="The scene with the ways the tube took."
        className="on-sky block w-full"
      >
        <ScenePicture variant={variant} dusk={dusk} stand={null} chosenId={result.target.id}>
          {result.ways
            .filter(({ byDay }) => byDay !== dusk)
            .map(({ open, from, to }, i) => {
              const start = toScene(from, middleAzimuthDeg);
              const end = toScene(to, middleAzimuthDeg);
              // The shorter way round, also where it leaves the scene.
              const across = ((end.x - start.x + 540) % 360) - 180;
              return (
                <path
                  key={i}
                  d={pathOf([start, { x: start.x + across, y: end.y }])}
                  fill="none"
                  stroke={open ? 'var(--sky-lamp)' : 'var(--on-sky)'}
                  strokeWidth={open ? 1.2 : 0.6}
                  strokeDasharray={open ? undefined : '1.4 1.4'}
                  strokeLinecap="round"
                />
              );
            })}
        </ScenePicture>
      </svg>
      <figcaption className="mt-1 text-sm text-soft">
        Thin broken line: the tube turned with its caps on. Thick whole line: turned open.
      </figcaption>
    </figure>
  );
}
