import type { ItemAnswer } from '@/lib/items/item-answer';
import type { ItemFace } from '@/lib/items/item-face';
import { readNumber } from '@/lib/items/read-number';

/** How far an answer has come, before anybody marks it. */
export type AnswerState = 'none' | 'unfinished' | 'not-a-number' | 'answered';

export function answerState(face: ItemFace, answer: ItemAnswer | null): AnswerState {
  if (answer === null || answer.kind !== face.kind) return 'none';
  switch (answer.kind) {
    case 'choice':
    case 'point':
      return answer.option === null ? 'none' : 'answered';
    case 'several':
      return answer.options.length === 0 ? 'none' : 'answered';
    case 'order':
      return 'answered';
    case 'match': {
      const given = Object.keys(answer.pairs).length;
      if (given === 0) return 'none';
      return face.kind === 'match' && given < face.left.length ? 'unfinished' : 'answered';
    }
    case 'numeric':
      if (answer.text.trim() === '') return 'none';
      if (face.kind !== 'numeric') return 'none';
      return readNumber(answer.text, face.unit) === null ? 'not-a-number' : 'answered';
  }
}
