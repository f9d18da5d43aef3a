import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import { declinationAt } from '../clock/declination';
import { rightSettings, type EnteredSettings } from '../clock/entered-settings';
import { loadKits } from '../content/sky-catalogue';
import { cardPairs } from '../night/card-pairs';
import type { Evening, NoEvening } from '../night/evening';
import type { CardPair, NightPlan } from '../night/plan-night';
import type { TubeType } from '../optics/image-orientation';
import { trueFieldArcmin } from '../optics/true-field';
import type { Eyepiece } from '../pointing/scenario';
import { skyFrameAt } from '../sky/frame-at';
import type { SkylinePoint } from '../sky/horizon';
import type { SkyFrame } from '../sky/sky-frame';
import { mayWithClass } from './access';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { nightKits, ownKitId, type NightStand } from './night-sites';
import { planEvening, type PlannedEvening } from './planned-night';
import { notFound, success, type Result } from './result';

type CardEyepiece = { focalLengthMm: number; fieldArcmin: number };

/** What a card says of one telescope. */
export type FieldCard = {
  /** Tells the cards of one sheaf apart. */
  key: string;
  kitName: string;
  /** Of the class's group that has this telescope; null: the card belongs to no group. */
  groupName: string | null;
  /** Null for a telescope of the teacher's own numbers: what its tube takes is not known. */
  tubeType: TubeType | null;
  /** The eyepiece that stars are centred in, and the one to observe with. */
  centring: CardEyepiece;
  observing: CardEyepiece;
  pairs: readonly CardPair[];
  /** The sky when the first of the pairs begins; null where there is no pair. */
  frame: SkyFrame | null;
};

export type ClassFieldCards = PlannedEvening & {
  className: string;
  evening:
    | {
        ok: true;
        evening: Evening;
        /** What is entered into the mount at the evening's beginning. */
        entered: EnteredSettings;
        /** How far east a compass needle points of true north; null where no model says. */
        declinationDeg: number | null;
      }
    | { ok: false; reason: NoEvening };
  horizon: readonly SkylinePoint[];
  cards: readonly FieldCard[];
};

/**
 * A card for the telescope of each of the class's groups, or for each telescope where no group has one;
 * for the evening that `request` names as a night plan does.
 */
export async function getFieldCards(
  viewer: Viewer,
  classId: string,
  request: unknown,
  clock: Clock = systemClock,
): Promise<Result<ClassFieldCards>> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return notFound();
  const [planned, { name: className, groups }] = await Promise.all([
    planEvening(classId, request, clock),
    db().class.findUniqueOrThrow({
      where: { id: classId },
      select: {
        name: true,
        groups: { orderBy: { name: 'asc' }, select: { id: true, name: true, kitId: true } },
      },
    }),
  ]);
  if (!planned.ok) return planned;
  const { asked, stand, site } = planned.value;
  const plan = await planned.value.plan();
  const telescopes = telescopesOf(stand);
  const sharedOut = groups.flatMap(({ id, name, kitId }) => {
    const telescope = telescopes.find((one) => one.kitId === kitId);
    return telescope === undefined ? [] : [{ ...telescope, key: id, groupName: name }];
  });
  const all = telescopes.map((one) => ({ ...one, key: one.kitId, groupName: null }));
  const { place, horizon, timeZone } = site;
  return success({
    ...asked,
    className,
    evening: plan.ok
      ? {
          ok: true,
          evening: plan.plan.evening,
          entered: rightSettings(plan.plan.evening.from, place, timeZone),
          declinationDeg: declinationOrNull(site, plan.plan.evening.from),
        }
      : plan,
    horizon,
    cards: plan.ok
      ? (sharedOut.length > 0 ? sharedOut : all).map((telescope) =>
          cardOf(telescope, plan.plan, place),
        )
      : [],
  });
}

type CardTelescope = Omit<FieldCard, 'pairs' | 'frame'> & { kitId: string };

function cardOf(
  { kitId, ...telescope }: CardTelescope,
  plan: NightPlan,
  place: NightStand['scenario']['place'],
): FieldCard {
  const pairs = cardPairs(plan, kitId);
  const [first] = pairs;
  const frame =
    first === undefined ? null : skyFrameAt({ instant: new Date(first.instant), place });
  return { ...telescope, pairs, frame };
}

function declinationOrNull(
  { place }: Pick<NightStand['scenario'], 'place'>,
  instant: string,
): number | null {
  const found = declinationAt(place, instant);
  return found.ok ? found.declinationDeg : null;
}

/** The telescopes of a night with what their cases hold. */
function telescopesOf({ scenario }: NightStand): Omit<CardTelescope, 'key' | 'groupName'>[] {
  const built = loadKits();
  return nightKits(scenario).map(({ id: kitId, name: kitName, telescope, eyepiece }) => {
    const kit = kitId === ownKitId ? undefined : built.find(({ id }) => id === kitId);
    const fieldOf = (one: Eyepiece): CardEyepiece => ({
      focalLengthMm: one.focalLengthMm,
      fieldArcmin: trueFieldArcmin(telescope, one),
    });
    const centring = kit?.eyepieces.find(({ id }) => id === kit.centringEyepieceId) ?? eyepiece;
    return {
      kitId,
      kitName,
      tubeType: kit?.tubeType ?? null,
      centring: fieldOf(centring),
      observing: fieldOf(eyepiece),
    };
  });
}
