'use client';

import Link from 'next/link';
import { useRouter } from 'next/navigation';
import {
  startTransition,
  useActionState,
  useEffect,
  useRef,
  useState,
  useTransition,
  type ReactNode,
} from 'react';
import { Button } from '@/components/ui/button';
import { buttonLook } from '@/components/ui/button-look';
import { FieldError } from '@/components/ui/field';
import type { Skill } from '@/lib/course/skills';
import type { ItemFace } from '@/lib/items/item-face';
import { emptyAnswer } from './answers';
import { FeedbackView } from './feedback-view';
import { answerField, nothingSent, type AnswerAction, type PracticeState } from './practice-state';
import { QuestionFields } from './question-fields';
import { StandingView } from './standing-view';
import type { SkillStanding } from './skill-standing';

type PracticeQuestionProps = {
  /** `key` tells one question from the next. */
  question: { key: string; face: ItemFace };
  standing: SkillStanding | null;
  answerAction: AnswerAction;
  /** Where the next question is; the page's own address for a student, who is asked what comes next. */
  nextAddress: string;
  /** Shown under the feedback of the answer that mastered a skill, by that skill. */
  whenMastered: Readonly<Partial<Record<Skill, ReactNode>>>;
};

const promptId = 'question-prompt';

/**
 * One question of practice, its outcome, and the way to the next. Works without script: the form then
 * reloads the page, which shows the outcome of what was sent.
 */
export function PracticeQuestion(props: PracticeQuestionProps) {
  const { question, answerAction, nextAddress } = props;
  const [posted, post] = useActionState(answerAction, nothingSent);
  // With script the answer goes this way, so that one that cannot be sent stays in its fields.
  const [sent, setSent] = useState<PracticeState | null>(null);
  const [sending, setSending] = useState(false);
  const state = sent ?? posted;
  const [answer, setAnswer] = useState(
    (posted.questionKey === question.key ? posted.answer : null) ?? emptyAnswer(question.face),
  );
  const [asked, setAsked] = useState(question.key);
  if (asked !== question.key) {
    setAsked(question.key);
    setSent(nothingSent);
    setAnswer(emptyAnswer(question.face));
  }
  useFocusOnNew(question.key);

  const send = (form: FormData) => {
    if (sending) return;
    setSending(true);
    startTransition(async () => {
      try {
        setSent(await answerAction(state, form));
      } catch {
        // The connection, or a server that was restarted: whichever, the answer is still here.
        setSent({ ...nothingSent, tries: state.tries + 1, refusal: notSent });
      } finally {
        setSending(false);
      }
    });
  };

  const { outcome } = state;
  return (
    <div className="space-y-5">
      {(outcome?.standing ?? props.standing) === null ? null : (
        <Standing now={outcome?.standing ?? null} before={props.standing} />
      )}
      <form
        action={post}
        onSubmit={(event) => {
          event.preventDefault();
          send(new FormData(event.currentTarget));
        }}
      >
        <input type="hidden" name="kind" value={question.face.kind} />
        <QuestionFields
          face={outcome?.face ?? question.face}
          answer={(outcome === null ? null : state.answer) ?? answer}
          onAnswer={setAnswer}
          name={answerField}
          disabled={outcome !== null}
          promptId={promptId}
        />
        {outcome === null ? (
          <Button type="submit" variant="primary" busy={sending} className="mt-3">
            Check my answer
          </Button>
        ) : null}
      </form>
      <Outcome state={state}>
        <Brought outcome={outcome} whenMastered={props.whenMastered} />
        <NextQuestion address={nextAddress} />
      </Outcome>
    </div>
  );
}

const notSent =
  'Your answer could not be sent: there is no connection. It is still here. Check it again when the connection is back.';

function Standing(props: { now: SkillStanding | null; before: SkillStanding | null }) {
  const standing = props.now ?? props.before;
  return standing === null ? null : <StandingView standing={standing} />;
}

/** What the answer brought, said once: later answers bring it no more. */
function Brought({
  outcome,
  whenMastered,
}: {
  outcome: PracticeState['outcome'];
  whenMastered: PracticeQuestionProps['whenMastered'];
}) {
  const standing = outcome?.standing ?? null;
  if (outcome === null || standing === null) return null;
  switch (outcome.brought) {
    case null:
      return null;
    case 'mastery':
      return whenMastered[standing.skill] ?? null;
    case 'review':
      return (
        <p>
          {standing.review === null
            ? 'That was the last review: this skill has stayed.'
            : `Review passed. The next one is ${standing.review}.`}
        </p>
      );
  }
}

/** The prompt takes the focus when another question takes the place of the one before. */
function useFocusOnNew(key: string) {
  const first = useRef(key);
  useEffect(() => {
    if (first.current === key) return;
    first.current = key;
    document.getElementById(promptId)?.focus();
  }, [key]);
}

/** Always there, so that what comes up in it is read out. */
function Outcome({ state, children }: { state: PracticeState; children: ReactNode }) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // On a phone it may come up below the edge of the screen.
    if (state.tries > 0) box.current?.scrollIntoView({ block: 'nearest' });
  }, [state.tries]);
  return (
    <div ref={box} className="space-y-5">
      <div role="status">
        {state.refusal === null ? null : (
          <FieldError id="answer-refused">{state.refusal}</FieldError>
        )}
        {state.outcome === null ? null : <FeedbackView feedback={state.outcome.feedback} />}
      </div>
      {state.outcome === null ? null : children}
    </div>
  );
}

function NextQuestion({ address }: { address: string }) {
  const router = useRouter();
  const [going, go] = useTransition();
  return (
    <Link
      href={address}
      prefetch={false}
      aria-busy={going}
      className={buttonLook('primary', 'normal')}
      onClick={(event) => {
        if (event.metaKey || event.ctrlKey || event.shiftKey) return;
        event.preventDefault();
        go(() => {
          // The same address draws anew only when it is asked to.
          router.push(address);
          router.refresh();
        });
      }}
    >
      Next question
    </Link>
  );
}
