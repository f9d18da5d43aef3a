import { markText } from '@/components/grading/mark-text';
import type { PartStatistics } from '@/lib/data/class-statistics';
import { fewestToTrust } from '@/lib/measurement/small-class';
import { coefficientText, countText } from './statistics-words';

/** The mark on the screen that goes with signing off at the real telescope; from thirty students on. */
export function AtTheTelescope({ part, passMark }: { part: PartStatistics; passMark: number }) {
  const { telescope } = part;
  if (telescope === null) return null;
  const { people, line } = telescope;
  return (
    <div className={line === null ? 'text-soft' : ''}>
      <h5 className="font-semibold">Beside what you saw at the telescope</h5>
      <p className="max-w-measure text-sm">
        {people < fewestToTrust
          ? `${countText(people, 'student')} with a mark here ${people === 1 ? 'was' : 'were'} also seen at the real telescope. From ${String(fewestToTrust)} on, this line says which mark goes with signing off.`
          : line === null
            ? `${String(people)} students were also seen at the real telescope, all at one level: no line can be drawn.`
            : `On the line through ${String(people)} students, somebody who only just signs off at the telescope has ${markText(line.cut)} here (r² ${line.rSquared === null ? 'cannot be told' : coefficientText(line.rSquared)}); your pass mark is ${markText(passMark)}.`}
      </p>
    </div>
  );
}
