import { match } from '../build-item';
import type { ItemDraw } from '../item-family';
import { hitsOf } from './hits-of';
import { observingRadius, someKit } from './kit-fields';
import { arcmin } from './words';

export function rateMatch({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const radius = observingRadius(kit);
  const sigma = kit.telescope.centringArcmin;
  for (;;) {
    const careful = Math.max(1, Math.round(sigma * random.between(0.5, 0.9)));
    const careless = Math.round(careful * random.between(3.5, 6));
    const wideGap = random.integer(16, 24) * 5;
    const narrowGap = random.integer(4, 8) * 5;
    const all = [
      { gapDeg: wideGap, centringArcmin: careful },
      { gapDeg: wideGap, centringArcmin: careless },
      { gapDeg: narrowGap, centringArcmin: careless },
    ].map((setting) => ({ ...setting, hits: Math.round(hitsOf(kit, radius, setting)) }));
    const [best, middle, worst] = all;
    if (best === undefined || middle === undefined || worst === undefined) continue;
    if (best.hits - middle.hits < 10 || middle.hits - worst.hits < 10 || worst.hits < 1) continue;
    return match({
      prompt: `Three alignments of ${kit.name} on stars 40° up. Which hit rate belongs to which?`,
      pairs: all.map(({ gapDeg, centringArcmin, hits }) => ({
        left: `${String(gapDeg)}° apart in azimuth, centred to ${arcmin(centringArcmin)}`,
        right: `${String(hits)} of 100`,
        reason:
          hits === best.hits
            ? 'Far apart and well centred.'
            : hits === middle.hits
              ? 'Far apart, but each star left well off the middle.'
              : 'Close together and badly centred: the slips grow over the sky.',
      })),
      explanation:
        'A wide pair keeps slips small. Careful centring makes them small to begin with.',
    });
  }
}
