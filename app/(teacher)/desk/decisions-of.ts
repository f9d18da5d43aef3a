import type { DecisionActions, DecisionTarget } from '@/components/desk/decision-forms';
import { decideDue, decideExcuse, decideMark } from './decision-actions';

/** What the three forms of a cell send. */
export const decisionsOf = (target: DecisionTarget): DecisionActions => ({
  mark: decideMark.bind(null, target),
  excuse: decideExcuse.bind(null, target),
  due: decideDue.bind(null, target),
});
