import { CircleCheck, CircleDashed, CircleDot } from 'lucide-react';
import { classNames } from '@/components/ui/class-names';
import type { ItemFeedback } from '@/lib/items/grade-item';
import { misconceptions } from '@/lib/items/misconceptions';
import { ItemPicture } from './item-picture';

const verdicts = {
  right: { word: 'Yes', Icon: CircleCheck, look: 'border-good bg-good-soft' },
  near: { word: 'Not quite', Icon: CircleDot, look: 'border-caution bg-caution-soft' },
  wrong: { word: 'Not this time', Icon: CircleDashed, look: 'border-caution bg-caution-soft' },
} as const;

/** What came of an answer: the verdict, what to say of it, the right answer, how one gets there, what happens. */
export function FeedbackView({ feedback }: { feedback: ItemFeedback }) {
  const { verdict, said, right, explanation, afterwards } = feedback;
  const { word, Icon, look } = verdicts[verdict];
  const [first, ...more] = said;
  return (
    <div className="space-y-3">
      <div className={classNames('max-w-measure rounded-md border px-3 py-2', look)}>
        <p className="flex items-start gap-2">
          <Icon aria-hidden="true" className="mt-[0.25em] size-5 shrink-0" />
          <span>
            <strong className="font-semibold">{word}.</strong> {first}
          </span>
        </p>
        {more.map((sentence) => (
          <p key={sentence} className="mt-1 ps-7">
            {sentence}
          </p>
        ))}
        {feedback.misconceptions.map((id) => (
          <p key={id} className="mt-1 ps-7">
            <strong className="font-semibold">Many people start out thinking so.</strong>{' '}
            {misconceptions[id]}
          </p>
        ))}
      </div>
      <dl className="max-w-measure space-y-2">
        {verdict === 'right' ? null : <Told term="The answer">{right}</Told>}
        <Told term="How you get there">{explanation}</Told>
      </dl>
      {afterwards === null ? null : (
        <section>
          <h3 className="font-semibold">What happens</h3>
          <ItemPicture drawing={afterwards} />
        </section>
      )}
    </div>
  );
}

function Told({ term, children }: { term: string; children: string }) {
  return (
    <div>
      <dt className="font-semibold">{term}</dt>
      <dd>{children}</dd>
    </div>
  );
}
