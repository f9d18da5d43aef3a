import type { FieldOffset } from '@/lib/optics/image-orientation';
import type { Share } from '@/lib/rehearsal/attribution';
import type { TracedMiss } from './miss-words';

/** One arrow of the way from the star to where the tube came to rest. Arcminutes, right and up. */
export type ChainLink = {
  /** Null: what no cause does by itself. */
  cause: Share['cause'] | null;
  from: FieldOffset;
  to: FieldOffset;
  /** Along the miss. */
  arcmin: number;
};

/** Shorter ones are told together in one line of the table. */
const leastArcmin = 0.5;

/**
 * The miss as a chain: each cause's vector set at the end of the one before, the largest first, and what
 * they do only together at the end, so that the chain ends where the tube stood.
 */
export function chainOf({ miss, shares, togetherArcmin }: TracedMiss): ChainLink[] {
  const links: ChainLink[] = [];
  let end: FieldOffset = { rightArcmin: 0, upArcmin: 0 };
  for (const { cause, moved, arcmin } of shares) {
    const to = {
      rightArcmin: end.rightArcmin + moved.rightArcmin,
      upArcmin: end.upArcmin + moved.upArcmin,
    };
    links.push({ cause, from: end, to, arcmin });
    end = to;
  }
  links.push({ cause: null, from: end, to: miss, arcmin: togetherArcmin });
  return links;
}

export const linkLength = ({ from, to }: ChainLink): number =>
  Math.hypot(to.rightArcmin - from.rightArcmin, to.upArcmin - from.upArcmin);

/** Whether an arrow has a line of its own. */
export const counts = (link: ChainLink): boolean =>
  linkLength(link) >= leastArcmin || Math.abs(link.arcmin) >= leastArcmin;
