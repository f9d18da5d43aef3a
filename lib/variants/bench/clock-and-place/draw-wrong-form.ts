import {
  believedSkyOf,
  missDeg,
  tubeSentTo,
  type BelievedSky,
} from '../../../clock/believed-place';
import {
  entriesThatDiffer,
  fieldsOfEntry,
  formEntries,
  formProblem,
  type FormEntry,
  type MountForm,
} from '../../../clock/mount-form';
import { rootMeanSquare } from '../../../clock/split-by-cause';
import { separationDeg } from '../../../units/vector';
import type { Random } from '../../random';
import type { ClockEvening } from './clock-evening';
import { slipsOf } from './form-slips';

/** A form filled in by somebody else, and what is wrong in it. */
export type WrongForm = { form: MountForm; wrong: readonly FormEntry[] };

const wrongRows = 2;
/** Less than this nobody would see on the sky. */
const visibleDeg = 0.8;

/** A form with two wrong rows, each of which would show on the sky. */
export function drawFormToCheck(random: Random, evening: ClockEvening): WrongForm {
  const { right, summerTimeMinutes } = evening;
  const exchanged = exchangedPlace(right);
  if (exchanged !== null && random.next() < 0.15) {
    return { form: exchanged, wrong: ['latitude', 'longitude'] };
  }
  for (let draw = 0; draw < 60; draw++) {
    const rows = random.shuffle(formEntries).slice(0, wrongRows);
    const slips = rows.map((row) => random.pick(slipsOf(row, right)));
    const form = slips.reduce<MountForm>((made, slip) => ({ ...made, ...slip }), right);
    const differ =
      formProblem(form) === null ? entriesThatDiffer(form, right, summerTimeMinutes) : [];
    const shows = (slip: Partial<MountForm> | undefined): boolean =>
      slip !== undefined && missOf(evening, slip) >= visibleDeg;
    // Two that all but cancel would leave nothing to find on the sky.
    const visible = differ.length > 0 && [...slips, form].every(shows);
    if (differ.length === wrongRows && visible) return { form, wrong: differ };
  }
  throw new Error('no two rows of a form can be wrong together');
}

/** Latitude in the place of longitude; null where no mount would take that. */
function exchangedPlace(right: MountForm): MountForm | null {
  const form: MountForm = {
    ...right,
    latitudeDegrees: right.longitudeDegrees,
    latitudeMinutes: right.longitudeMinutes,
    latitudeSide: right.longitudeSide === 'E' ? 'N' : 'S',
    longitudeDegrees: right.latitudeDegrees,
    longitudeMinutes: right.latitudeMinutes,
    longitudeSide: right.latitudeSide === 'N' ? 'E' : 'W',
  };
  const differ = entriesThatDiffer(form, right, 60);
  return formProblem(form) === null && differ.length === 2 ? form : null;
}

/** What is told apart by the landing of a first slew: three tenths of a fist. */
const toldApartDeg = 3;
/** A miss that a beginner at the telescope cannot overlook. */
const plainMissDeg = 4;
const smudgedRows = 3;
const hourRows: readonly FormEntry[] = ['time', 'zone', 'summer-time'];

/**
 * A form with one wrong row, and three rows of the card that cannot be read any more, the wrong one among
 * them: only one slip in those three can have sent the tube where it went.
 */
export function drawFormByLanding(
  random: Random,
  evening: ClockEvening,
): WrongForm & { smudged: readonly FormEntry[] } {
  const { right } = evening;
  for (let draw = 0; draw < 200; draw++) {
    const [wrong, ...others] = random.shuffle(formEntries);
    if (wrong === undefined) break;
    const slip = random.pick(slipsOf(wrong, right));
    if (slip === undefined || missOf(evening, slip) < plainMissDeg) continue;
    const smudged = formEntries.filter(
      (row) => row === wrong || others.slice(0, smudgedRows - 1).includes(row),
    );
    // An hour off may stand in any of the three: only one of them may be in doubt.
    if (smudged.filter((row) => hourRows.includes(row)).length > 1) continue;
    const rivals = smudged.flatMap((row) =>
      slipsOf(row, right).filter((rival) => JSON.stringify(rival) !== JSON.stringify(slip)),
    );
    if (rivals.every((rival) => landApartDeg(evening, slip, rival) >= toldApartDeg)) {
      return { form: { ...right, ...slip }, wrong: [wrong], smudged };
    }
  }
  throw new Error('every slip looks like another one');
}

function believed(
  { right, summerTimeMinutes }: ClockEvening,
  slip: Partial<MountForm>,
): BelievedSky {
  const sky = believedSkyOf({ ...right, ...slip }, { right, summerTimeMinutes });
  if (sky === null) throw new Error('a slip that no mount would take');
  return sky;
}

const judgedOf = ({ stars }: ClockEvening) => stars.filter(({ judged }) => judged);

const missOf = (evening: ClockEvening, slip: Partial<MountForm>): number =>
  rootMeanSquare(
    judgedOf(evening).map((star) => missDeg(star, believed(evening, slip), evening.sky)),
  );

function landApartDeg(
  evening: ClockEvening,
  slip: Partial<MountForm>,
  rival: Partial<MountForm>,
): number {
  const [one, other] = [believed(evening, slip), believed(evening, rival)];
  return Math.max(
    ...judgedOf(evening).map((star) =>
      separationDeg(tubeSentTo(star, one, evening.sky), tubeSentTo(star, other, evening.sky)),
    ),
  );
}

/** Some rows of a form. */
export const rowsOf = (form: MountForm, rows: readonly FormEntry[]): Partial<MountForm> =>
  Object.fromEntries(
    rows.flatMap((row) => fieldsOfEntry[row].map((field) => [field, form[field]])),
  );
