import { Notice } from '@/components/ui/notice';
import type { LessonFrontMatter } from '@/lib/content/lesson-front-matter';

/** A caution before the step that meets the danger. A gate says so: no score buys it off. */
export function Hazard({ hazard }: { hazard: LessonFrontMatter['hazards'][number] }) {
  const danger = hazard.severity === 'danger';
  return (
    <Notice
      tone={danger ? 'danger' : 'caution'}
      title={danger ? 'Danger' : 'Take care'}
      className="my-4"
    >
      <p>{hazard.text}</p>
      {hazard.gate ? (
        <p className="text-sm">
          Whoever gets this wrong is not ready yet, however well the rest went. Your teacher’s word
          and local rules come first.
        </p>
      ) : null}
    </Notice>
  );
}
