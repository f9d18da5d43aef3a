import 'server-only';
import { z } from 'zod';
import { loadCatalogue } from '../content/sky-catalogue';
import { gradePair } from '../grading/grade-pair';
import type { PairResult } from '../grading/pair-result';
import { pairSubmissionSchema } from '../grading/pair-submission';
import { storedAnswerKey } from '../pointing/stored-answer-key';
import { parseScenario } from '../pointing/parse-scenario';
import { generatePairVariant } from '../variants/generate-pair-variant';
import { pairTemplates, type PairVariant } from '../variants/pair-variant';
import { refusalMessage } from './attempt-work';
import { systemClock, type Clock } from './clock';
import {
  defaultPlace,
  eveningScenario,
  kitOrFirst,
  siteOrSchoolYard,
  tonightAt,
} from './default-evening';
import { getPlace, type Place } from './places';
import { failure, success, type Result } from './result';

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
export type VisitorRound = Required<VisitorRoundRequest> & {
  placeName: string;
  variant: PairVariant;
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

export async function makeVisitorRound(
  request: VisitorRoundRequest,
  clock: Clock = systemClock,
): Promise<Result<VisitorRound>> {
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
  const variant = generatePairVariant({
    seed,
    scenario: checked.scenario,
    templates: pairTemplates,
    windowMinutes,
    catalogue: loadCatalogue(),
  });
  const { id: kitId } = kit;
  const { id: siteId } = site;
  return success({ seed, kitId, siteId, placeId, localTime, placeName: place.name, variant });
}

/** Makes the round again and marks the submission; what the browser sends of the round is its address. */
export async function gradeVisitorRound(
  request: Required<VisitorRoundRequest>,
  submission: unknown,
): Promise<Result<PairResult>> {
  const parsed = pairSubmissionSchema.safeParse(submission);
  if (!parsed.success)
    return failure('bad-input', 'This answer cannot be read. Nothing was counted.');
  const round = await makeVisitorRound(request);
  if (!round.ok) return round;
  const { variant } = round.value;
  const { scenario, frame } = variant;
  const catalogue = loadCatalogue();
  const answerKey = storedAnswerKey({ scenario, instant: frame.instant, frame, catalogue });
  const grading = gradePair({ variant, answerKey, submission: parsed.data, catalogue });
  return grading.ok
    ? success(grading.result)
    : failure(grading.refusal.code, refusalMessage(grading.refusal));
}
