import { onDisc } from '@/components/sky/all-sky';
import { SkyPicture } from '@/components/sky/sky-picture';
import type { SkyPictureStar } from '@/components/sky/sky-picture-stars';
import type { AnswerKey, AnswerKeyStar } from '@/lib/pointing/answer-key';
import type { Scenario } from '@/lib/pointing/scenario';
import type { SkyFrame } from '@/lib/sky/sky-frame';

/** The picture's own measures: a disc of 200 units, names of 15 units beside their stars. */
const discRadius = 200;
const letterWidth = 8.5;
const lineHeight = 18;

type Box = { left: number; right: number; top: number; bottom: number };

/** Roughly where a star's name is printed: to the left of it near the right edge, else to the right. */
function nameBox(star: AnswerKeyStar): Box {
  const { x, y } = onDisc(star, discRadius);
  const width = star.name.length * letterWidth + 14;
  const left = x > 110 ? x - width : x;
  return { left, right: left + width, top: y - 9 - lineHeight / 2, bottom: y - 9 + lineHeight / 2 };
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** The brightest usable stars whose names leave room for each other and for the best pair's. */
function starsToName(answerKey: AnswerKey, taken: readonly AnswerKeyStar[]): AnswerKeyStar[] {
  const boxes = taken.map(nameBox);
  const named: AnswerKeyStar[] = [];
  const usable = answerKey.stars.filter((star) => star.usable);
  for (const star of usable.toSorted((a, b) => a.magnitude - b.magnitude)) {
    const box = nameBox(star);
    if (boxes.some((other) => overlap(other, box))) continue;
    boxes.push(box);
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
      sun={frame.sun}
      limits={scenario.settings}
      pairs={best === null ? [] : [{ kind: 'best', stars: best }]}
      named={starsToName(answerKey, best ?? [])}
      className="max-w-xl print:max-w-none print:[&_svg]:max-w-[8cm]"
    />
  );
}
