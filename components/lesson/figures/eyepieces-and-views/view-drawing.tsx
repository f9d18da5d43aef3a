import { useId } from 'react';
import type { ViewTarget } from './view-facts';

/** Stars of a cluster: a spiral of golden angles fills a disc evenly; a drawing, no chart. */
const clusterStars = Array.from({ length: 26 }, (_, i) => {
  const out = Math.sqrt((i + 0.5) / 26);
  const angle = i * 2.399_963;
  return { x: out * Math.cos(angle), y: out * Math.sin(angle), r: i % 5 === 0 ? 2.2 : 1.4 };
});

type ViewDrawingProps = { target: ViewTarget; fieldArcmin: number; label: string };

/** The ring of an eyepiece with a target in it, to scale. */
export function ViewDrawing({ target, fieldArcmin, label }: ViewDrawingProps) {
  const clip = useId();
  const scale = 200 / fieldArcmin;
  return (
    <svg
      viewBox="-112 -112 224 224"
      role="img"
      aria-label={label}
      className="mx-auto block w-full max-w-[24rem]"
    >
      <clipPath id={clip}>
        <circle r="100" />
      </clipPath>
      <circle r="102" className="fill-sky stroke-strong" strokeWidth="4" />
      <g clipPath={`url(#${clip})`}>
        {target.kind === 'double' ? (
          [-1, 1].map((side) => (
            <circle
              key={side}
              cx={(side * scale * target.separationArcsec) / 120}
              r="1.3"
              className="fill-sky-lamp"
            />
          ))
        ) : target.kind === 'moon' ? (
          <circle r={(scale * target.sizeArcmin) / 2} className="fill-on-sky" />
        ) : (
          clusterStars.map(({ x, y, r }) => (
            <circle
              key={`${x.toFixed(3)}/${y.toFixed(3)}`}
              cx={((x * target.sizeArcmin) / 2) * scale}
              cy={((y * target.sizeArcmin) / 2) * scale}
              r={r}
              className="fill-on-sky"
            />
          ))
        )}
        {target.kind === 'cluster' ? (
          <circle
            r={(scale * target.sizeArcmin) / 2}
            className="fill-none stroke-sky-lamp"
            strokeWidth="1"
            strokeDasharray="4 3"
          />
        ) : null}
      </g>
    </svg>
  );
}
