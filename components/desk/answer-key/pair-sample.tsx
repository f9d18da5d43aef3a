import type { AnswerKey, AnswerKeyPair } from '@/lib/pointing/answer-key';

/** The best answer that a sample of "Pick the pair" leaves; null where there is none. */
export function PairSample({
  answerKey,
  sample,
}: {
  answerKey: AnswerKey;
  sample: AnswerKeyPair | null;
}) {
  if (sample === null) return <p>Best answer in the sample: say that there is no good pair.</p>;
  const nameOf = (hip: number): string =>
    answerKey.stars.find((star) => star.hip === hip)?.name ?? `HIP ${hip}`;
  const [first, second] = sample.stars;
  return (
    <p>
      Best in its sky: {nameOf(first)} and {nameOf(second)}, {sample.separationDeg.toFixed(0)}°
      apart, {(sample.hitRate * 100).toFixed(0)} of 100 targets in the eyepiece.
    </p>
  );
}
