import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { parseArgs } from 'node:util';
import { parseRunScenario } from '../alignment/parse-run-scenario';
import { kitFrom, setupFrom } from '../alignment/run-scenario';
import { loadCatalogue } from '../content/sky-catalogue';
import { perfectRun, type NoPerfectRun, type PerfectRun } from '../grading/perfect-run';
import { answerKeyFor } from '../pointing/answer-key-for';
import type { AnswerKey } from '../pointing/answer-key';
import { skyFrameAt } from '../sky/frame-at';
import { answerKeyTable } from './answer-key-table';
import { perfectRunTable } from './perfect-run-table';

const help = `Prints which stars may serve for a two-star alignment, and what every pair is worth.

  npm run answer-key -- scenario.json            as JSON
  npm run answer-key -- scenario.json --table    as tables for people
  npm run answer-key -- - < scenario.json        reads the scenario from standard input
  npm run answer-key -- --run scenario.json      also what a perfect operator gets on the mount
                                                 with the errors that the scenario hides in it

A scenario is a JSON file with these fields (the last six may be left out; content/scenarios holds some):
  place      { latitudeDeg, longitudeDeg, elevationM }   east and north positive
  localTime  "2026-12-05T19:30"; where the hour comes twice with its offset, "2026-11-01T01:30-05:00"
  timeZone   "America/Toronto"
  telescope  { focalLengthMm, apertureMm, computer: "solved-zero" | "fixed-zero",
               centringArcmin, altitudeZeroArcmin, coneArcmin, axisSkewArcmin }
               computer: whether it solves for the altitude's zero or takes it as set;
               centringArcmin: how well a star is centred; the other three: how far off the
               altitude's zero, the tube on its axis (cone) and the two axes to each other (skew)
               usually are. All four are standard deviations.
  eyepiece   { focalLengthMm, apparentFieldDeg }         the one the targets are looked at with
  horizon    [ { azimuthDeg, altitudeDeg }, … ]          once round, joined by straight lines
  sky        { darkestLimitMagnitude, extinction }
  clouds     [ { azimuthDeg, altitudeDeg, radiusDeg }, … ]
  settings   { faintestMagnitude, lowestAltitudeDeg, highestAltitudeDeg, horizonMarginDeg,
               moonDistanceDeg }
  setup      read with --run, what is hidden from the operator; whatever is left out is not wrong:
             { base { tiltDeg, risesTowardsDeg }, altitudeZeroArcmin, coneArcmin, axisSkewArcmin,
               dot { rightArcmin, upArcmin }, backlashArcmin { azimuth, altitude },
               finalApproach { azimuth, altitude }, encoderStepArcsec, slewDegPerSecond,
               clockErrorSeconds, believedPlace { latitudeDeg, longitudeDeg } }
               dot: where the finder points beside the tube; finalApproach: 1 or -1, which way
               the last move must go (1, right and up); encoderStepArcsec: one count (15);
               slewDegPerSecond: speed of a go-to (3); clockErrorSeconds: how fast the entered
               clock is; believedPlace: what was entered as the place
  kit        { tubeType: "refractor" | "reflector" | "maksutov-cassegrain",
               centringEyepiece { focalLengthMm, apparentFieldDeg } }
               what a run is shown with; a perfect operator does as well with any

--run adds "run" to the JSON, made by running the whole procedure: north and level, the best pair
centred dead in the middle, last moves in the final approach direction.
  stars      the pair, as HIP numbers; null where none can be aligned on, then with a reason
  outcome    { kind, mismatchArcmin, baseTiltDeg, altitudeZeroDeg }      what the computer says
  hitRate    share of go-tos that land in the eyepiece, with the errors as they are
  rmsArcmin  by how much all of them miss
  minutes    from the first go-to to the second star
  thirds     [ { hip, missArcmin, inField }, … ]                         stars to check on

Exit code 2 and a message that names the field when the scenario cannot be used.`;

/** Something the user can put right: told in a line, never as a stack trace. */
class BadInput extends Error {}

async function main(): Promise<void> {
  const { values, positionals } = options();
  if (values.help) {
    console.log(help);
    return;
  }
  const [file = process.stdin.isTTY ? undefined : '-', ...more] = positionals;
  if (file === undefined || more.length > 0) {
    throw new BadInput(`Give one scenario file.\n\n${help}`);
  }
  const name = file === '-' ? 'standard input' : file;
  const parsed = parseRunScenario(asJson(await contents(file, name), name));
  if (!parsed.ok) {
    throw new BadInput(
      parsed.problems.map(({ field, message }) => `${name}: ${field}: ${message}`).join('\n'),
    );
  }
  const { scenario, instant, groups } = parsed;
  const frame = skyFrameAt({ instant, place: scenario.place });
  const catalogue = loadCatalogue();
  const key = answerKeyFor({ scenario, instant, frame, catalogue });
  const input = {
    scenario,
    frame,
    catalogue,
    setup: setupFrom(groups, scenario, frame),
    kit: kitFrom(groups, scenario),
    givenHip: null,
    proposals: null,
    mayPause: false,
  };
  const run = values.run ? perfectRun(input, key) : null;
  const tables = () =>
    [
      answerKeyTable(scenario, frame, key),
      ...(run === null ? [] : [perfectRunTable(run, key)]),
    ].join('\n\n');
  process.stdout.write(`${values.table ? tables() : asText(key, run)}\n`);
}

function options() {
  try {
    return parseArgs({
      allowPositionals: true,
      options: {
        table: { type: 'boolean', default: false },
        run: { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h', default: false },
      },
    });
  } catch (error) {
    throw new BadInput(`${messageOf(error)}\n\n${help}`, { cause: error });
  }
}

async function contents(file: string, name: string): Promise<string> {
  try {
    return file === '-' ? await text(process.stdin) : await readFile(file, 'utf8');
  } catch (error) {
    throw new BadInput(`${name}: cannot be read (${messageOf(error)}).`, { cause: error });
  }
}

function asJson(content: string, name: string): unknown {
  try {
    return JSON.parse(content.replace(/^\uFEFF/, ''));
  } catch (error) {
    throw new BadInput(`${name}: is not JSON (${messageOf(error)}).`, { cause: error });
  }
}

const messageOf = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);

/** One star or pair a line; six decimals, far below what anything here is good for. */
function asText(key: AnswerKey, run: PerfectRun | NoPerfectRun | null): string {
  const line = (value: unknown) =>
    JSON.stringify(value, (_, item: unknown) =>
      typeof item === 'number' ? Math.round(item * 1e6) / 1e6 : item,
    );
  const list = (items: readonly unknown[]) =>
    items.length === 0 ? '[]' : `[\n    ${items.map(line).join(',\n    ')}\n  ]`;
  return `{
  "instant": ${line(key.instant)},
  "nakedEyeLimit": ${line(key.nakedEyeLimit)},
  "stars": ${list(key.stars)},
  "pairs": ${list(key.pairs)}${run === null ? '' : `,\n  "run": ${line(run)}`}
}`;
}

// A reader that has seen enough (`| head`) closes the pipe: nothing to report.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

try {
  await main();
} catch (error) {
  if (!(error instanceof BadInput)) throw error;
  console.error(error.message);
  process.exitCode = 2;
}
