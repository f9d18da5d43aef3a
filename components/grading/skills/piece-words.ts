import { lowerFirst } from '@/lib/wording/capital';
import { labText, templateText } from '@/components/grading/template-text';
import type { RecordedPiece } from '@/lib/data/skill-progress';
import { neededInARow } from '@/lib/mastery/mastery';

/** What a piece of evidence was, as a teacher would name it. */
export function pieceWords({ source, about }: Pick<RecordedPiece, 'source' | 'about'>): string {
  switch (source.kind) {
    case 'question':
      return `Question: ${lowerFirst(about ?? source.family)}`;
    case 'item':
      return `Question of “${source.title}”: ${lowerFirst(about ?? source.family)}`;
    case 'lab': {
      const { lab, template, from } = source;
      const task = `${labText[lab].name}: ${lowerFirst(templateText(lab, template).name)}`;
      return from === 'gates' ? `Safety gates of ${task}` : task;
    }
  }
}

/** How it came out: a mark, or what was or was not so. */
export function outcomeWords(
  {
    source,
    mark,
    passMark,
    passed,
  }: Pick<RecordedPiece, 'source' | 'mark' | 'passMark' | 'passed'>,
  shown: (mark: number) => string,
): string {
  if (source.kind === 'lab' && source.from === 'gates') {
    return passed ? 'no gate failed' : 'a gate failed';
  }
  if (source.kind === 'lab' && source.from === 'rehearsal') return passed ? 'shown' : 'not shown';
  return `${shown(mark)} of 100, ${shown(passMark)} to pass`;
}

/** What the piece did to the standing. */
export function changeWords(made: RecordedPiece['made']): string {
  if (made === 'mastery') return `${String(neededInARow)} in a row: mastered`;
  if (made === 'review') return 'passes a review';
  return `${String(made.inARow)} in a row`;
}
