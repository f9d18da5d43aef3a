import { act, cleanup, render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { brightnessInWords, positionInWords } from '@/components/sky/position-words';
import type { RunLog } from '@/lib/alignment/run-log';
import { runSubmissionSchema } from '@/lib/grading/run-submission';
import { gradeRun } from '@/lib/grading/grade-run';
import { randomRunNights, type RunNight } from '@/tests/support/run-nights';
import {
  axisPerSkyIn,
  fieldTenthsIn,
  finderDegreesIn,
  fistDegreesIn,
  nearEnough,
} from '@/tests/support/twin-reading';
import { runLabVariant } from './run-lab-variant';
import { RunModel } from './run-model';
import { RunTable } from './run-table';

afterEach(cleanup);

/** One with each of the three telescopes, and a compass that points beside north. */
const nights = [...randomRunNights('by table', 3, [-60, 65])].map((night) => ({
  ...night,
  variant: { ...night.variant, setup: { ...night.variant.setup, declinationDeg: -7.5 } },
}));

function open({ variant, input }: RunNight) {
  const model = new RunModel({
    variant: runLabVariant(variant, { placeName: 'Testham' }),
    catalogue: input.catalogue,
    mode: 'check',
    log: [],
    onLog: () => undefined,
  });
  render(<RunTable model={model} />);
  return { model, user: userEvent.setup() };
}
type Opened = ReturnType<typeof open>;

/** By its heading: asking by role walks the whole page each time. */
function section(name: string): HTMLElement {
  const found = screen.getByText(name, { selector: 'h2' }).closest('section');
  if (found === null) throw new Error(`no section ${name}`);
  return found;
}

/** The rows of a table, each with its letter and its cells' texts; none where there is no table. */
const rowsIn = (name: string): { letter: string; cells: string[] }[] =>
  [...section(name).querySelectorAll('tbody tr')].map((row) => ({
    letter: row.querySelector('th')?.textContent ?? '',
    cells: [...row.querySelectorAll('td')].map((cell) => cell.textContent),
  }));

async function type({ user }: Opened, label: string | RegExp, text: string): Promise<void> {
  const field = screen.getByLabelText(label);
  await user.clear(field);
  await user.type(field, text);
}

const controls = {
  azimuth: { label: /^Azimuth/, less: 'Left', more: 'Right' },
  altitude: { label: /^Altitude/, less: 'Down', more: 'Up' },
};

async function moveBy(opened: Opened, axis: 'azimuth' | 'altitude', by: number): Promise<void> {
  if (by === 0) return;
  const { label, less, more } = controls[axis];
  await type(opened, label, Math.abs(by).toFixed(2));
  await opened.user.click(screen.getByText(by < 0 ? less : more, { selector: 'button' }));
}

const axisPerSky = (): number => axisPerSkyIn(screen.getByText(/^The red dot is/).textContent);

/** As someone does who knows the sky: the letter of the light where the star is known to stand. */
function letterOf({ model }: Opened, hip: number): string {
  const light = model.lists.lights().find(({ id }) => id === `hip-${hip}`);
  if (light === undefined) throw new Error(`star ${hip} cannot be seen`);
  const place = positionInWords(light.azimuthDeg, light.altitudeDeg);
  const looks = brightnessInWords(light.seenAs);
  const row = rowsIn('What the eye sees').find(
    ({ cells }) => cells[1] === place && cells[2]?.startsWith(looks),
  );
  if (row === undefined) throw new Error(`no row for a ${looks} light, ${place}`);
  return row.letter;
}

/** To the dot by eye and fist, into the eyepiece by the finder, to the middle by the clock. */
async function centre(opened: Opened, letter: string): Promise<void> {
  const { model, user } = opened;
  const { orientation } = model.variant.kit;
  const find = (name: string) => rowsIn(name).find((row) => row.letter === letter);
  const units = screen.getByLabelText('Numbers are');
  await user.selectOptions(units, 'degrees');
  for (let look = 0; look < 12 && find('In the eyepiece') === undefined; look += 1) {
    const inFinder = find('In the finder');
    const { right, up } =
      inFinder === undefined
        ? fistDegreesIn(find('What the eye sees')?.cells[0] ?? '')
        : finderDegreesIn(inFinder.cells[0] ?? '');
    await moveBy(opened, 'altitude', up);
    await moveBy(opened, 'azimuth', right * axisPerSky());
  }
  await user.selectOptions(units, 'minutes');
  const radius = model.lists.eyepieceRadiusArcmin;
  // Ten minutes of arc are more than the play: beyond, and back in the final approach direction.
  const beyond = 10;
  for (let look = 0; look < 8; look += 1) {
    const place = find('In the eyepiece')?.cells[0] ?? '';
    const { right, up } = fieldTenthsIn(place, orientation);
    if (look > 0 && nearEnough(place)) return;
    await moveBy(opened, 'altitude', (up * radius) / 10 - beyond);
    await moveBy(opened, 'altitude', beyond);
    await moveBy(opened, 'azimuth', ((right * radius) / 10) * axisPerSky() - beyond);
    await moveBy(opened, 'azimuth', beyond);
  }
  throw new Error(`${letter} does not come to the middle`);
}

async function setStart(opened: Opened, compass: string, level: string): Promise<void> {
  await type(opened, /compass/, compass);
  await type(opened, /level/, level);
  await opened.user.click(screen.getByText('Set it and lock the clutches'));
}

/** The buttons of the panel are pressed on the model: they are the same beside the picture. */
async function playedByTable(night: RunNight): Promise<RunLog> {
  const opened = open(night);
  const { model } = opened;
  await setStart(opened, '7.5', '0');
  for (const hip of night.best) {
    act(() => void model.goTo(hip));
    await centre(opened, letterOf(opened, hip));
    act(() => void model.confirm());
  }
  expect(model.snapshot().outcome?.kind).toBe('agree');
  const [third] = night.variant.thirdHips;
  if (third !== undefined) act(() => void model.goTo(third));
  act(() => void model.judge(true));
  return model.done;
}

test.each(nights)(
  'a run by table alone, with nothing but what it tells, has full marks: $variant.kit.name',
  async (night) => {
    const log = await playedByTable(night);
    const { variant, answerKey, input } = night;
    const submission = runSubmissionSchema.parse({ log });
    const grading = gradeRun({ variant, answerKey, submission, catalogue: input.catalogue });
    if (!grading.ok) throw new Error(JSON.stringify(grading.refusal));
    expect(grading.result.advice).toEqual({ code: 'well-done' });
    expect(grading.result.total).toBeGreaterThan(99.999);
  },
);

const [night] = nights;

describe('the table', () => {
  async function started(): Promise<Opened> {
    if (night === undefined) throw new Error('no night');
    const opened = open(night);
    await setStart(opened, '7.5', '0');
    act(() => void opened.model.goTo(night.best[0]));
    return opened;
  }

  test('names no light, and judges places and brightness roughly', async () => {
    const { model } = await started();
    const names = new Set(model.catalogue.stars.flatMap(({ name }) => name ?? []));
    for (const { letter, cells } of rowsIn('What the eye sees')) {
      expect(letter).toMatch(/^[A-Z]+$/);
      expect(cells[0]).toMatch(/^(at the dot|[a-z ]+ fists? (left|right|up|down)(, .*)?)$/);
      for (const cell of cells) expect(names.has(cell)).toBe(false);
    }
    for (const { cells } of rowsIn('In the finder'))
      expect(cells[0]).toMatch(
        /^(on the dot|(\d(\.5)?° (right|left|up|down)(, )?)+|((15|30|45)′ (right|left|up|down)(, )?)+)$/,
      );
  });

  test('lets no time pass but by what is done', async () => {
    const { model, user } = await started();
    const before = model.atMs;
    model.tick(0);
    model.tick(60_000);
    expect(model.atMs).toBe(before);
    // 5° at 0.6° a second (run-log.ts and the working rules of the mount).
    await user.click(screen.getByText('Right', { selector: 'button' }));
    expect(model.atMs - before).toBe(Math.ceil((5 / 0.6) * 1000));
  });

  test('keeps a light’s letter from table to table, and when the table is left for the picture', async () => {
    const opened = await started();
    if (night === undefined) throw new Error('no night');
    const letter = letterOf(opened, night.best[0]);
    await centre(opened, letter);
    expect(rowsIn('In the eyepiece')[0]?.letter).toBe(letter);
    cleanup();
    render(<RunTable model={opened.model} />);
    expect(rowsIn('In the eyepiece')[0]?.letter).toBe(letter);
  });

  test('tells after each move what is in view, for the status line', async () => {
    const { model, user } = await started();
    await user.click(screen.getByText('Up', { selector: 'button' }));
    expect(model.snapshot().said).toMatch(/^Moved 5° up\. /);
  });

  test('asks for a number where there is none, and moves nothing', async () => {
    const opened = await started();
    const { length } = opened.model.done;
    await type(opened, controls.azimuth.label, 'far');
    await opened.user.click(screen.getByText('Left', { selector: 'button' }));
    expect(opened.model.done).toHaveLength(length);
    expect(screen.getByText(/Type how far/)).toBeTruthy();
  });

  test('says nothing of the dot while the clutches are loose', async () => {
    if (night === undefined) throw new Error('no night');
    const opened = open(night);
    expect(rowsIn('What the eye sees').length).toBeGreaterThan(0);
    expect(section('What the eye sees').textContent).not.toMatch(/dot/);
    await setStart(opened, '7.5', '0');
    expect(screen.getByText(/^The red dot is/)).toBeTruthy();
    expect(screen.getByText('From the dot')).toBeTruthy();
  });

  test('sets the start by the compass, whose needle keeps its declination', async () => {
    if (night === undefined) throw new Error('no night');
    const opened = open(night);
    expect(screen.getByText(/7\.5° west of true north/)).toBeTruthy();
    await setStart(opened, '0', '1.5');
    expect(opened.model.done[0]).toMatchObject({
      do: 'set-start',
      azimuthDeg: 352.5,
      altitudeDeg: 1.5,
    });
  });
});
