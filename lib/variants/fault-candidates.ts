import type { RunKit } from '../alignment/setup';
import { runEvening, type EveningShown } from '../faults/evening';
import type { FaultId } from '../faults/fault-ids';
import { faultOf } from '../faults/faults';
import { topics, type Evening } from '../faults/faulty-evening';
import { observationsOf } from '../faults/observations';
import {
  cluesBetween,
  comparisons,
  shownBy,
  type Clue,
  type Comparison,
} from '../faults/look-alikes';
import type { StarCatalogue } from '../sky/catalogue';
import { drawEvening, inTheirOrder, type DrawnEvening } from './draw-evening';
import { mostAlike } from './fault-options';
import type { FaultTemplate, Look } from './fault-variant';
import type { Night } from './night';
import type { Random } from './random';

/** What each kind of task tells without being asked. */
export const openLooks: Readonly<Record<FaultTemplate, readonly Look[]>> = {
  'first-slews': ['first', 'second', 'outcome'],
  'after-the-alignment': ['outcome', 'later'],
  'one-slew': ['first'],
  'card-first': ['card', 'outcome'],
  bystander: ['observations', 'outcome'],
};

/** An evening that went wrong, and what it could have been. Not yet a learner's task. */
export type FaultCandidate = {
  template: FaultTemplate;
  fault: FaultId;
  night: Night;
  shown: EveningShown;
  compared: readonly Comparison[];
};

/**
 * Makes an evening with that fault which suits the template; null when this night, or this draw of
 * stars and hands, has none. It always shows in where the telescope goes or in what the computer says:
 * a fault that does nothing is none. In all kinds of task but one it shows in what is told; where only
 * one slew is told, a faultless one is a clue as well.
 */
export function faultCandidate({
  template,
  fault,
  random,
  night,
  catalogue,
  kit,
}: {
  template: FaultTemplate;
  fault: FaultId;
  random: Random;
  night: Night;
  catalogue: StarCatalogue;
  kit: RunKit;
}): FaultCandidate | null {
  const drawn = drawEvening({ random, night, catalogue, kit });
  if (drawn === null) return null;
  const { evening, sizes } = template === 'bystander' ? withAWitness(drawn, fault, random) : drawn;
  const faultless = runEvening(evening);
  // An evening that goes wrong without a fault would have two.
  if (faultless.evidence.outcome.kind !== 'agree') return null;
  const suits = (shown: EveningShown): boolean => {
    if (template === 'after-the-alignment' && shown.evidence.outcome.kind !== 'agree') return false;
    if (shown.testSlews.length === 0) return false;
    const amiss = cluesBetween(evening, faultless, shown);
    const isTold = (clue: Clue): boolean => openLooks[template].some((look) => look === clue);
    return amiss.some(isInTheSky) && (template === 'one-slew' || amiss.some(isTold));
  };
  const forms = shownBy(faultOf(fault), evening, sizes).filter(suits);
  const shown = random.pick(forms);
  if (shown === undefined) return null;
  const compared = comparisons(evening, sizes, shown);
  if (compared.filter((one) => one.alike).length > mostAlike) return null;
  return { template, fault, night, shown, compared };
}

const isInTheSky = (clue: Clue): boolean => clue !== 'card' && clue !== 'observations';

/** Somebody looked where the fault can be seen, where there is such a place. */
function withAWitness(drawn: DrawnEvening, fault: FaultId, random: Random): DrawnEvening {
  const { evening, sizes } = drawn;
  const everything = (of: Evening) => observationsOf({ ...of, noticed: topics });
  const [form] = faultOf(fault).forms(evening, sizes);
  const usual = everything(evening);
  const unusual = form === undefined ? usual : everything(form);
  const telling = topics.filter((_, i) => usual[i] !== unusual[i]);
  const others = random.shuffle(evening.noticed.filter((topic) => !telling.includes(topic)));
  const noticed = inTheirOrder([...telling, ...others.slice(0, random.integer(2, 3))]);
  return { evening: { ...evening, noticed }, sizes };
}
