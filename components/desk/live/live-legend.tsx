/** The rules behind "may need you", with their figures: a teacher must know what the board does not see. */
export function LiveLegend({
  rules,
}: {
  rules: Readonly<
    Record<
      | 'quietMinutes'
      | 'quietQuestionMinutes'
      | 'wrongInARow'
      | 'notYetInARow'
      | 'hereMinutes'
      | 'lessonMinutes',
      number
    >
  >;
}) {
  return (
    <details className="max-w-measure text-sm text-soft">
      <summary className="cursor-pointer font-semibold">What the board goes by</summary>
      <ul className="mt-2 list-disc space-y-1 ps-5">
        <li>
          <strong>May need you:</strong> no new step for {rules.quietMinutes} minutes in open work;
          no answer to a question for {rules.quietQuestionMinutes}; {rules.wrongInARow} wrong
          answers in a row; {rules.notYetInARow} pieces of the same lab in a row that did not pass;
          or a safety gate failed in what was handed in last.
        </li>
        <li>
          These figures are our judgement. A student may sit and think, and one who clicks a lot may
          understand nothing: look up as well.
        </li>
        <li>
          The board knows what was saved, asked, answered and handed in, and which page of a lesson
          was opened last. It does not watch anybody’s screen.
        </li>
        <li>
          <strong>Here</strong> with nothing open: signed in, looking round or between two things.
        </li>
        <li>
          <strong>Not here:</strong> signed out, or nothing heard for {rules.hereMinutes} minutes,
          with work open for {rules.lessonMinutes}. What is older than {rules.lessonMinutes} minutes
          is left out.
        </li>
        <li>
          With names hidden, neither names nor marks are sent to this page: card numbers stand
          instead.
        </li>
      </ul>
    </details>
  );
}
