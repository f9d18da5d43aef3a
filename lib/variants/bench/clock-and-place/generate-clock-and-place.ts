import { declinationAt } from '../../../clock/declination';
import { formEntries, type FormEntry } from '../../../clock/mount-form';
import { fieldRadiusArcmin } from '../../../pointing/field-radius';
import type { Scenario } from '../../../pointing/scenario';
import { randomFrom, type Random } from '../../random';
import type { BenchTaskInput } from '../bench-variant';
import type { ClockAndPlaceTemplate, ClockAndPlaceVariant } from './clock-and-place-variant';
import { clockEvening, type ClockEvening } from './clock-evening';
import { drawChangeNight } from './draw-change-night';
import { drawClockCard } from './draw-clock-card';
import { drawAway, drawInstant, drawNeedlePlace, drawSpot } from './draw-clock-places';
import { drawFormByLanding, drawFormToCheck, rowsOf } from './draw-wrong-form';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

/** What a template makes of it; the rest is the same for all. */
type Drawn = Pick<ClockAndPlaceVariant, 'card' | 'given' | 'open' | 'change' | 'declinationDeg'> & {
  evening: ClockEvening;
};
type Draw = (random: Random, scenario: Scenario, windowMinutes: number) => Drawn;

const draws: Readonly<Record<ClockAndPlaceTemplate, Draw>> = {
  'enter-the-card': (random, scenario, windowMinutes) => {
    const evening = eveningNearby(random, scenario, windowMinutes);
    const card = drawClockCard(random, evening, { summerByDates: random.next() < 0.6 });
    return { evening, card, given: {}, open: formEntries, change: null, declinationDeg: null };
  },

  'check-the-form': (random, scenario, windowMinutes) => {
    const evening = eveningNearby(random, scenario, windowMinutes);
    const { form } = drawFormToCheck(random, evening);
    const card = drawClockCard(random, evening, { summerByDates: random.next() < 0.6 });
    return { evening, card, given: form, open: formEntries, change: null, declinationDeg: null };
  },

  'dew-on-the-card': (random, scenario, windowMinutes) => {
    const evening = eveningNearby(random, scenario, windowMinutes);
    const { form, smudged } = drawFormByLanding(random, evening);
    const card = drawClockCard(random, evening, { smudged });
    return { evening, card, given: form, open: smudged, change: null, declinationDeg: null };
  },

  'night-of-the-change': (random, scenario) => {
    const { evening, change, written } = drawChangeNight(random, scenario);
    const drawn = drawClockCard(random, evening, { summerByDates: true });
    const { year, month, day, hour, minute } = written;
    const card = {
      ...drawn,
      date: { ...drawn.date, year, month, day },
      time: { ...drawn.time, hour, minute },
    };
    const given = rowsOf(evening.right, ['zone', 'latitude', 'longitude']);
    const open: FormEntry[] = ['date', 'time', 'summer-time'];
    return { evening, card, given, open, change, declinationDeg: null };
  },

  'far-from-home': (random, scenario) => {
    const { place, instant } = drawAway(random, scenario);
    const evening = clockEvening(place, instant);
    const card = drawClockCard(random, evening, {
      watchZone: scenario.timeZone,
      summerByDates: random.next() < 0.4,
    });
    return { evening, card, given: {}, open: formEntries, change: null, declinationDeg: null };
  },

  'by-the-needle': (random, scenario, windowMinutes) => {
    const nearby = eveningNearby(random, scenario, windowMinutes);
    const nearbyDeg = needleDeg(nearby);
    const { place, instant } = drawNeedlePlace(random, scenario);
    const evening = Math.abs(nearbyDeg) >= needleErrsDeg ? nearby : clockEvening(place, instant);
    const card = drawClockCard(random, evening);
    const given = rowsOf(evening.right, ['date', 'time', 'zone', 'summer-time']);
    const open: FormEntry[] = ['latitude', 'longitude'];
    return { evening, card, given, open, change: null, declinationDeg: needleDeg(evening) };
  },
};

/** Where the needle errs by less, leaving it as it is would cost next to nothing. */
const needleErrsDeg = 6;
/** A year that the model of the Earth's field serves, for evenings outside it. */
const servedInstant = '2026-06-01T00:00:00Z';

/** As it stands on a card: to the degree to which a compass is read. */
function needleDeg({ place, instant }: ClockEvening): number {
  const at = {
    latitudeDeg: place.latitudeArcmin / 60,
    longitudeDeg: place.longitudeArcmin / 60,
    elevationM: 0,
  };
  const now = declinationAt(at, instant);
  const found = now.ok ? now : declinationAt(at, servedInstant);
  return found.ok ? Math.round(found.declinationDeg) : 0;
}

const eveningNearby = (random: Random, scenario: Scenario, windowMinutes: number): ClockEvening =>
  clockEvening(drawSpot(random, scenario), drawInstant(random, scenario, windowMinutes));

/**
 * One student's "Clock and place". The same input makes the same task; place, minute and way of writing
 * differ from student to student.
 *
 * @throws {RangeError} when the scenario's local time is none: `parseScenario` refuses those.
 */
export function generateClockAndPlace({
  seed,
  scenario,
  templates,
  windowMinutes,
  kit,
}: BenchTaskInput<ClockAndPlaceTemplate>): ClockAndPlaceVariant {
  const random = randomFrom(seed);
  const template = random.pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  const { evening, ...drawn } = draws[template](random, scenario, windowMinutes);
  const { right, summerTimeMinutes, sky, stars } = evening;
  const eyepiece = kit.eyepieces.find(({ id }) => id === kit.centringEyepieceId);
  if (eyepiece === undefined) throw new Error('the kit has no eyepiece to centre with');
  return {
    lab: 'clock-and-place',
    template,
    generatorVersion,
    kitName: kit.name,
    ...drawn,
    right,
    summerTimeMinutes,
    sky,
    stars,
    tubeType: kit.tubeType,
    fieldRadiusDeg: fieldRadiusArcmin(kit, eyepiece) / 60,
  };
}
