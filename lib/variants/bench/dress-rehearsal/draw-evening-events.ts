import type { EveningEvents } from '../../../rehearsal/handed-on';
import type { Random } from '../../random';
import type { DressRehearsalTemplate } from './dress-rehearsal-variant';

/*
 * How much a kick moves a stand that gives, and how far a tube stays behind in a clutch that was not
 * locked: enough to lose every eyepiece, as such things are. Ours, without a source.
 */
const leanDeg = { least: 0.7, most: 1.6 };
const turnDeg = { least: 0.4, most: 1.5 };
const behindDeg = { least: 1.2, most: 3 };

/** What an evening holds ready for whoever left something loose. */
export function drawEveningEvents(random: Random, template: DressRehearsalTemplate): EveningEvents {
  const sign = (): 1 | -1 => (random.next() < 0.5 ? 1 : -1);
  const kick = {
    // Between the stars it spoils the alignment, after them what was aligned.
    afterConfirm: random.integer(1, 2),
    tiltDeg: random.between(leanDeg.least, leanDeg.most),
    risesTowardsDeg: random.between(0, 360),
    azimuthDeg: sign() * random.between(turnDeg.least, turnDeg.most),
  };
  const ifNotLocked = {
    afterConfirm: random.integer(1, 2),
    azimuthDeg: sign() * random.between(behindDeg.least, behindDeg.most),
    altitudeDeg: -random.between(behindDeg.least, behindDeg.most) / 2,
  };
  return { kick: template === 'windy-evening' ? kick : null, ifNotLocked };
}
