import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import { fortnightFrom, type Fortnight } from '../night/fortnight';
import { mayWithClass } from './access';
import { systemClock, type Clock } from './clock';
import { givesWay } from './in-turns';
import { keepLast } from './keep-last';
import { planEvening, type PlannedEvening, type PlanOrNone } from './planned-night';
import { notFound, success, type Result } from './result';

/** What is asked for is there at once, what is reckoned a while later, when it is first wanted. */
export type ClassNightPlan = PlannedEvening & {
  plan: () => Promise<PlanOrNone>;
  fortnight: () => Promise<Fortnight>;
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
  const evening = { localDate: asked.localDate, endsAt: asked.endsAt };
  return success({
    ...asked,
    plan,
    fortnight: () =>
      lastFortnights({ site, ...evening }, () => fortnightFrom(site, evening, givesWay())),
  });
}
