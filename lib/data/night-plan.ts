import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import type { NoEvening } from '../night/evening';
import { fortnightFrom, type Fortnight } from '../night/fortnight';
import type { NightPlan } from '../night/plan-night';
import { mayWithClass } from './access';
import { systemClock, type Clock } from './clock';
import { keepLast } from './keep-last';
import { planEvening, type PlannedEvening } from './planned-night';
import { notFound, success, type Result } from './result';

export type ClassNightPlan = PlannedEvening & {
  plan: { ok: true; plan: NightPlan } | { ok: false; reason: NoEvening };
  fortnight: Fortnight;
};

const lastFortnights = keepLast<Fortnight>(24);

/** A plan of one evening of the class and the two weeks from it on; kept for a while in memory alone. */
export async function getNightPlan(
  viewer: Viewer,
  classId: string,
  request: unknown,
  clock: Clock = systemClock,
): Promise<Result<ClassNightPlan>> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return notFound();
  const planned = await planEvening(classId, request, clock);
  if (!planned.ok) return planned;
  const { asked, site, plan } = planned.value;
  const { localDate, endsAt } = asked;
  const fortnight = lastFortnights({ site, localDate, endsAt }, () => fortnightFrom(site, asked));
  return success({ ...asked, plan, fortnight });
}
