import type { Aside } from '@/lib/variants/bench/field/field-variant';

/** A degree and a quarter to either side. */
const halfWidthArcmin = 75;

/** What the eye sees past the dot: always the sky as it is. */
export function DotScene({ star, label }: { star: Aside; label: string }) {
  const scale = 100 / halfWidthArcmin;
  return (
    <svg viewBox="-108 -108 216 216" role="img" aria-label={label} className="size-full">
      <rect
        x={-100}
        y={-100}
        width={200}
        height={200}
        className="fill-[var(--sky)] stroke-[var(--sky-line)]"
        strokeWidth={3}
      />
      <path
        d="M-100 0H100M0 -100V100"
        className="stroke-[var(--sky-line)]"
        strokeWidth={0.6}
        strokeDasharray="2 5"
      />
      <circle r={5} className="fill-none stroke-[var(--sky-lamp)]" strokeWidth={2.5} />
      <circle
        cx={star.rightArcmin * scale}
        cy={-star.upArcmin * scale}
        r={3.2}
        className="fill-[var(--on-sky)]"
      />
      <text x={0} y={94} textAnchor="middle" className="fill-[var(--on-sky-soft)] text-[10px]">
        past the dot, with the eye
      </text>
    </svg>
  );
}
