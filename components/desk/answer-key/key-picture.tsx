import { SkyPicture } from '@/components/sky/sky-picture';
import type { SkyPictureStar } from '@/components/sky/sky-picture-stars';
import type { AnswerKey, AnswerKeyStar } from '@/lib/pointing/answer-key';
import type { Scenario } from '@/lib/pointing/scenario';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';

/** Names closer than this on the sky would print over one another. */
const roomForNameDeg = 11;

/** The brightest usable stars whose names leave room for each other and for the best pair's. */
function starsToName(answerKey: AnswerKey, taken: readonly AnswerKeyStar[]): AnswerKeyStar[] {
  const placed = taken.map((star) => directionFromAzAlt(star.azimuthDeg, star.altitudeDeg));
  const named: AnswerKeyStar[] = [];
  for (const star of answerKey.stars
    .filter(({ usable }) => usable)
    .toSorted((a, b) => a.magnitude - b.magnitude)) {
    const direction = directionFromAzAlt(star.azimuthDeg, star.altitudeDeg);
    if (placed.some((other) => separationDeg(other, direction) < roomForNameDeg)) continue;
    placed.push(direction);
    named.push(star);
  }
  return named;
}

/** The answer key drawn on the sky: the best pair, and the other usable stars by name. */
export function KeyPicture({
  answerKey,
  frame,
  scenario,
  stars,
}: {
  answerKey: AnswerKey;
  frame: SkyFrame;
  scenario: Scenario;
  stars: readonly SkyPictureStar[];
}) {
  const byHip = new Map(answerKey.stars.map((star) => [star.hip, star]));
  const [one, other] = (answerKey.pairs[0]?.stars ?? []).map((hip) => byHip.get(hip));
  const best = one === undefined || other === undefined ? null : ([one, other] as const);
  return (
    <SkyPicture
      title={
        best === null
          ? 'The sky of this assignment. No pair of stars is usable.'
          : `The sky of this assignment. The best pair, ${best[0].name} and ${best[1].name}, is marked with squares and a broken line.`
      }
      stars={stars}
      horizon={scenario.horizon}
      clouds={scenario.clouds}
      moon={frame.moon}
      limits={scenario.settings}
      pairs={best === null ? [] : [{ kind: 'best', stars: best }]}
      named={starsToName(answerKey, best ?? [])}
      className="max-w-xl"
    />
  );
}
