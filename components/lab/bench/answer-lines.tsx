import type { AnswerLine } from './bench-parts';

/** An answer in words, line by line. */
export function AnswerLines({ lines }: { lines: readonly AnswerLine[] }) {
  return (
    <dl className="space-y-2">
      {lines.map(({ asked, answer }) => (
        <div key={asked} className="border-s-4 border-accent ps-3">
          <dt className="text-sm text-soft">{asked}</dt>
          <dd className="font-semibold">{answer}</dd>
        </div>
      ))}
    </dl>
  );
}
