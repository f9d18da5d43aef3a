import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { databaseFile } from '../data/env';
import { failure, success, type Result } from '../data/result';
import { dataFolderFor } from './data-folder.mjs';

/** What a command may be told. */
type CommandLine = {
  /** As it is called: "npm run backup". */
  command: string;
  /** Besides `--school`. */
  flags: readonly string[];
  /** What one word without dashes stands for; null: nothing does. */
  word: string | null;
};

type Chosen = { given: ReadonlySet<string>; word: string | null };

/** Reads the words after the command's name; what cannot be meant is refused, and nothing is done. */
export function readCommandLine(
  args: readonly string[],
  { command, flags, word }: CommandLine,
): Result<Chosen> {
  const known = [...flags, 'school'];
  const refused = (what: string) => failure('command-line', `Nothing was done. ${what}`);
  const { tokens } = parseArgs({
    args: [...args],
    options: Object.fromEntries(known.map((flag) => [flag, { type: 'boolean' as const }])),
    allowPositionals: true,
    strict: false,
    tokens: true,
  });
  const given = new Set<string>();
  const words: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value);
    if (token.kind !== 'option') continue;
    if (!known.includes(token.name)) {
      const may = known.map((flag) => `--${flag}`).join(' and ');
      const about =
        token.name === 'demo' ? 'the demonstration is meant without any' : `it knows ${may}`;
      return refused(
        `${token.rawName} is no option of ${command}: ${about}. For the data of a class: ${command} -- --school`,
      );
    }
    if (token.value !== undefined)
      return refused(`${token.rawName} stands alone, without =${token.value}.`);
    given.add(token.name);
  }
  const [first, second] = words;
  if (first !== undefined && word === null)
    return refused(`${command} can make nothing of “${first}”; options start with two dashes.`);
  if (second !== undefined)
    return refused(
      `${command} takes one word, ${String(word)}, and got “${words.join('” and “')}”. Put a name with spaces in quotation marks.`,
    );
  return success({ given, word: first ?? null });
}

/**
 * Reads the command line of a command that works on a data folder: `--school` for the class's,
 * the demonstration's otherwise. Says what to do and ends the process when it cannot go on.
 */
export function chooseData(line: CommandLine): Chosen & { folder: string; whose: string } {
  const read = readCommandLine(process.argv.slice(2), line);
  if (!read.ok) {
    console.error(read.problem.message);
    process.exit(2);
  }
  const school = read.value.given.has('school');
  const folder = dataFolderFor(school ? 'school' : 'demo');
  if (!existsSync(databaseFile(folder))) {
    console.error(
      `There is no data in ${folder}.${school ? '' : ` For the data of a class: ${line.command} -- --school`}`,
    );
    process.exit(1);
  }
  // Read by lib/data when it is first used.
  process.env['DUSKBENCH_SCHOOL'] = school ? '1' : '0';
  process.env['DUSKBENCH_DATA'] = folder;
  return {
    folder,
    given: read.value.given,
    word: read.value.word,
    whose: school ? 'the class’s data' : 'the demonstration’s data',
  };
}
