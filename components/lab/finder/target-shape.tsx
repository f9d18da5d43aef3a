import type { DayTargetKind } from '@/lib/variants/bench/finder/finder-variant';

const paint = { fill: 'var(--on-sky-soft)', stroke: 'var(--land-near)' } as const;

/**
 * A thing to set a finder on, drawn in metres, the point to aim at in (0, 0), y downward. `line` is the
 * width of an outline in metres, so that it shows alike whatever the scale.
 */
export function TargetShape({ kind, line }: { kind: DayTargetKind; line: number }) {
  const outline = { ...paint, strokeWidth: line, strokeLinejoin: 'round' } as const;
  switch (kind) {
    case 'fence-post':
      return (
        <g>
          <path d="M-6 0.22 H6 V0.3 H-6 Z M-6 0.62 H6 V0.7 H-6 Z" {...outline} />
          <path d="M-0.06 1.6 V0.04 L0 -0.02 L0.06 0.04 V1.6 Z" {...outline} />
        </g>
      );
    case 'tree-trunk':
      return (
        <g>
          <path
            d="M-0.22 3 Q-0.15 0 -0.2 -3 L-0.9 -4.4 L-0.1 -3.6 L0.1 -5 L0.2 -3.4 L1 -4.6 L0.22 -2.6 Q0.16 0 0.24 3 Z"
            {...outline}
          />
          <circle cy="-5.6" r="2.3" {...outline} fillOpacity="0.55" />
          <ellipse rx="0.07" ry="0.1" fill="var(--land-near)" />
        </g>
      );
    case 'chimney':
      return (
        <g>
          <path d="M-3.6 3.4 L0 1.1 L3.6 3.4 V6 H-3.6 Z" {...outline} fillOpacity="0.6" />
          <path d="M-0.4 2 V0.3 H-0.16 L-0.12 -0.02 H0.12 L0.16 0.3 H0.4 V2 Z" {...outline} />
        </g>
      );
    case 'mast':
      return (
        <g>
          <path
            d="M-1.2 25 L-0.12 0 H0.12 L1.2 25 M-0.3 5 L0.48 10 L-0.72 15 L0.96 20"
            {...outline}
            fill="none"
            stroke="var(--on-sky-soft)"
            strokeWidth={Math.max(0.14, 1.6 * line)}
          />
          <circle r="0.35" {...outline} />
        </g>
      );
    case 'spire':
      return (
        <g>
          <path d="M-2.4 14 L0 0.4 L2.4 14 V24 H-2.4 Z" {...outline} />
          <circle r="0.4" {...outline} />
        </g>
      );
    case 'hill-tower':
      return (
        <g>
          <path d="M-70 34 Q-20 12 0 13 Q24 12 80 36 Z" {...outline} fill="var(--land)" />
          <path d="M-2.6 14 V0.8 H-1.6 V0 H-0.6 V0.8 H0.6 V0 H1.6 V0.8 H2.6 V14 Z" {...outline} />
        </g>
      );
  }
}
