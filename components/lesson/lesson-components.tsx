import type { ComponentType, ReactNode } from 'react';
import type { FigureName } from '@/lib/content/figure-names';
import type { LessonComponentName } from '@/lib/content/lesson-names';
import type { AnswerCheck } from '@/lib/content/check-state';
import { LinkButton } from '@/components/ui/link-button';
import { routes } from '@/lib/routes';
import type { CheckItemFace } from '@/lib/content/check-item';
import type { LessonView } from '@/lib/content/lesson-view';
import { AtAGlance } from './at-a-glance';
import { CheckQuestion } from './check-question';
import { Figure } from './figure';
import type { FigureData } from './figures/figure-data';
import { Hazard } from './hazard';
import { LessonPart, Misconception } from './lesson-part';
import { runningText } from './running-text';
import { SkyTable } from './sky-table';
import { Term } from './term';

type Children = { children: ReactNode };

/** A lesson's file was checked when it was read; what is missing here is a bug of ours. */
function required<T>(value: T | undefined, what: string): T {
  if (value === undefined) throw new Error(`a lesson asks for ${what}, which does not exist`);
  return value;
}

/** One component for each name of the vocabulary, for one lesson. */
export function lessonComponents(view: LessonView, data: FigureData, answerCheck: AnswerCheck) {
  const { lesson } = view;
  const questions = (items: readonly CheckItemFace[]) =>
    items.map((item, i) => (
      <CheckQuestion
        key={item.id}
        slug={view.slug}
        item={item}
        label={`${String(i + 1)}.`}
        answerCheck={answerCheck}
      />
    ));

  return {
    ...runningText,
    Retrieval: () => (
      <LessonPart
        title="Before you start"
        lead={
          lesson.previous === null
            ? 'Have a guess first. A wrong guess helps you to remember the right answer.'
            : 'Questions from earlier lessons. What comes back after a while stays.'
        }
      >
        {questions(view.retrieval)}
      </LessonPart>
    ),
    AtAGlance: () => <AtAGlance lesson={lesson} />,
    Hazard: ({ id }: { id: string }) => (
      <Hazard
        hazard={required(
          lesson.hazards.find((one) => one.id === id),
          `the hazard ${id}`,
        )}
      />
    ),
    WorkedExample: ({ title, children }: Children & { title: string }) => (
      <LessonPart title={`Worked example: ${title}`} boxed>
        {children}
      </LessonPart>
    ),
    FadedPractice: ({ children }: Children) => (
      <LessonPart title="Now you" lead="Each time a little more of it is yours.">
        {children}
      </LessonPart>
    ),
    Check: ({ id }: { id: string }) => (
      <CheckQuestion
        slug={view.slug}
        item={required(
          view.faded.find((one) => one.id === id),
          `the question ${id}`,
        )}
        label=""
        answerCheck={answerCheck}
      />
    ),
    CheckYourself: () => (
      <LessonPart
        title="Check yourself"
        lead="Nothing here is counted or kept. You are told why at once, and may try again."
      >
        {questions(view.checks)}
        <p className="no-print">
          <LinkButton href={routes.lessons.practise(view.slug)}>Practise until it holds</LinkButton>
        </p>
      </LessonPart>
    ),
    FieldTask: ({ children }: Children) => (
      <LessonPart title="Under the real sky" lead={lesson.practical.task} boxed>
        <ol className="my-3 list-decimal space-y-1.5 ps-6">{children}</ol>
        <p className="font-semibold">Your teacher looks for:</p>
        <ul className="list-disc ps-6">
          {lesson.practical.evidence.map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      </LessonPart>
    ),
    Step: ({ children }: Children) => <li>{children}</li>,
    Summary: ({ children }: Children) => <LessonPart title="In short">{children}</LessonPart>,
    Sources: () => (
      <section className="my-8 text-sm text-soft" aria-labelledby="sources">
        <h2 id="sources" className="font-semibold">
          Where this comes from
        </h2>
        <ul className="list-disc ps-6">
          {lesson.sources.map((source) => (
            <li key={source.text}>
              {source.url === undefined ? (
                source.text
              ) : (
                <a href={source.url} className="link" rel="external">
                  {source.text}
                </a>
              )}
            </li>
          ))}
        </ul>
        <p className="mt-2">
          Last reviewed {lesson.reviewed}. Numbers on this page are computed, not quoted; a hit rate
          is an approximation.
        </p>
      </section>
    ),
    Figure: (props: Children & { name: FigureName; alternative: string }) => (
      <Figure {...props} alternative={view.fill(props.alternative)} data={data} />
    ),
    Misconception,
    Computed: ({ value }: { value: string }) => (
      <span className="font-figures whitespace-nowrap">{view.text(value)}</span>
    ),
    SkyTable: ({ sky, of }: { sky: string; of: string }) => (
      <SkyTable {...view.skyTable(sky, of.split(' '))} />
    ),
    Term: ({ of, children }: { of?: string; children: ReactNode }) => {
      const term = (of ?? (typeof children === 'string' ? children : '')).toLowerCase();
      const entry = lesson.vocabulary.find((one) => one.term.toLowerCase() === term);
      return <Term definition={required(entry, `the term ${term}`).definition}>{children}</Term>;
    },
  } satisfies Record<LessonComponentName, ComponentType<never>> & typeof runningText;
}
