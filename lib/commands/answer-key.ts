import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { parseArgs } from 'node:util';
import { loadCatalogue } from '../content/sky-catalogue';
import { answerKeyFor } from '../pointing/answer-key-for';
import type { AnswerKey } from '../pointing/answer-key';
import { parseScenario } from '../pointing/parse-scenario';
import { skyFrameAt } from '../sky/frame-at';
import { answerKeyTable } from './answer-key-table';

const help = `Prints which stars may serve for a two-star alignment, and what every pair is worth.

  npm run answer-key -- scenario.json            as JSON
  npm run answer-key -- scenario.json --table    as tables for people
  npm run answer-key -- - < scenario.json        reads the scenario from standard input

A scenario is a JSON file with these fields (the last four may be left out; content/scenarios holds one):
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
  const parsed = parseScenario(asJson(await contents(file, name), name));
  if (!parsed.ok) {
    throw new BadInput(
      parsed.problems.map(({ field, message }) => `${name}: ${field}: ${message}`).join('\n'),
    );
  }
  const { scenario, instant } = parsed;
  const frame = skyFrameAt({ instant, place: scenario.place });
  const key = answerKeyFor({ scenario, instant, frame, catalogue: loadCatalogue() });
  process.stdout.write(`${values.table ? answerKeyTable(scenario, frame, key) : asText(key)}\n`);
}

function options() {
  try {
    return parseArgs({
      allowPositionals: true,
      options: {
        table: { type: 'boolean', default: false },
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
function asText(key: AnswerKey): string {
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
  "pairs": ${list(key.pairs)}
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
