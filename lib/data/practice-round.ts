import 'server-only';
import { z } from 'zod';
import { parseScenario } from '../pointing/parse-scenario';
import { firstRoundTemplates } from '../variants/first-rounds';
import type { Lab, Template } from '../variants/labs';
import { systemClock, type Clock } from './clock';
import {
  defaultPlace,
  eveningScenario,
  kitOrFirst,
  siteOrSchoolYard,
  tonightAt,
} from './default-evening';
import type { TaskInput } from './lab-tasks/lab-task';
import { getPlace, type Place } from './places';
import { failure, success, type Problem, type Result } from './result';

/** A visitor's round is made from its page address alone; nothing is kept. */
export type VisitorRoundRequest = {
  seed: string;
  kitId?: string;
  siteId?: string;
  placeId?: number;
  /** "2026-12-05T19:30" at the place; without it, tonight at nautical dusk. */
  localTime?: string;
};
/** The request with every choice made: put it into the address, and the same round can be made again. */
export type VisitorRound<Variant> = Required<VisitorRoundRequest> & {
  placeName: string;
  variant: Variant;
};

const requestSchema = z.object({
  seed: z.string().min(1).max(100),
  kitId: z.string().max(60).optional(),
  siteId: z.string().max(60).optional(),
  placeId: z.coerce.number().int().min(0).optional(),
  localTime: z.string().max(40).optional(),
});
const windowMinutes = 40;

const placeOf = async (id: number): Promise<Place | null> =>
  id === defaultPlace.id ? defaultPlace : getPlace(id);

/** A lab's part in a round; an entry of `labTasks` is one. */
type RoundLab<Variant, Outcome> = {
  makeRound: (input: RoundInput) => Variant;
  /** What is wrong with a task that nobody should be given; null when nothing is. */
  whyNoRound?: (variant: Variant) => Problem | null;
  markRound: (input: RoundInput, submission: unknown) => Result<Outcome>;
};
type RoundInput = Omit<TaskInput, 'templates'>;

/** Everything that a request chooses or leaves to us, with the sky that it makes. */
async function readRequest(request: VisitorRoundRequest, clock: Clock) {
  const parsed = requestSchema.safeParse(request);
  if (!parsed.success) return failure('bad-input', 'The address of this round cannot be read.');
  const { seed, placeId = defaultPlace.id } = parsed.data;
  const place = await placeOf(placeId);
  if (place === null)
    return failure('unknown-place', 'This place is not known. Search for it again.', 'placeId');
  const kit = kitOrFirst(parsed.data.kitId ?? null);
  const site = siteOrSchoolYard(parsed.data.siteId ?? null);
  const localTime = parsed.data.localTime ?? tonightAt(place, clock.now());
  const checked = parseScenario(eveningScenario({ place, localTime, kit, site }));
  if (!checked.ok) {
    const [problem] = checked.problems;
    return failure(
      'bad-input',
      `${problem?.field ?? 'scenario'} ${problem?.message ?? 'cannot be read.'}`,
      problem?.field,
    );
  }
  const { id: kitId } = kit;
  const { id: siteId } = site;
  const input: RoundInput = {
    seed,
    kitId,
    windowMinutes,
    scenario: checked.scenario,
    minutesAllowed: null,
    mayPause: true,
  };
  const round = { seed, kitId, siteId, placeId, localTime, placeName: place.name };
  return success({ round, input });
}

/** A lab's part in making a round. */
type RoundMaker<Variant> = Pick<RoundLab<Variant, unknown>, 'makeRound' | 'whyNoRound'>;

const unlessRefused = <Variant>(
  lab: RoundMaker<Variant>,
  round: VisitorRound<Variant>,
): Result<VisitorRound<Variant>> => {
  const problem = lab.whyNoRound?.(round.variant) ?? null;
  return problem === null ? success(round) : { ok: false, problem };
};

export async function makeVisitorRound<Variant>(
  lab: RoundMaker<Variant>,
  request: VisitorRoundRequest,
  clock: Clock = systemClock,
): Promise<Result<VisitorRound<Variant>>> {
  const read = await readRequest(request, clock);
  if (!read.ok) return read;
  const { round, input } = read.value;
  return unlessRefused(lab, { ...round, variant: lab.makeRound(input) });
}

/** By lot, fewer than two in a hundred newcomers draw so often in vain where the evening allows it. */
const mostDraws = 8;

/**
 * The round that a visitor meets first: one of the lab's plain kinds, with a seed drawn until it is. An
 * evening that gives none keeps its first draw.
 */
export async function makeFirstVisitorRound<Variant extends { lab: Lab; template: Template }>(
  lab: RoundMaker<Variant>,
  request: Omit<VisitorRoundRequest, 'seed'>,
  drawSeed: () => string,
  clock: Clock = systemClock,
): Promise<Result<VisitorRound<Variant>>> {
  const read = await readRequest({ ...request, seed: drawSeed() }, clock);
  if (!read.ok) return read;
  const { round, input } = read.value;
  const made = (seed: string) => ({ ...round, seed, variant: lab.makeRound({ ...input, seed }) });
  const isPlain = ({ variant }: { variant: Variant }): boolean =>
    firstRoundTemplates[variant.lab].includes(variant.template);
  const first = made(round.seed);
  let drawn = first;
  for (let draws = 1; draws < mostDraws && !isPlain(drawn); draws++) drawn = made(drawSeed());
  return unlessRefused(lab, isPlain(drawn) ? drawn : first);
}

/** Makes the round again and marks the submission; what the browser sends of the round is its address. */
export async function gradeVisitorRound<R>(
  lab: Pick<RoundLab<unknown, R>, 'markRound'>,
  request: Required<VisitorRoundRequest>,
  submission: unknown,
): Promise<Result<R>> {
  const read = await readRequest(request, systemClock);
  return read.ok ? lab.markRound(read.value.input, submission) : read;
}
