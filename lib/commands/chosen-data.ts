import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { dataFolderFor } from './data-folder.mjs';

/**
 * Reads the command line of a command that works on a data folder: `--school` for the class's,
 * the demonstration's otherwise. Says what to do and ends the process when it cannot go on.
 */
export function chooseData(flags: readonly string[]): {
  folder: string;
  given: ReadonlySet<string>;
  words: readonly string[];
} {
  const options = Object.fromEntries(
    [...flags, 'school'].map((flag) => [flag, { type: 'boolean' as const }]),
  );
  let parsed;
  try {
    parsed = parseArgs({ options, allowPositionals: true });
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error));
    process.exit(2);
  }
  const given = new Set(Object.keys(parsed.values));
  const school = given.has('school');
  const folder = dataFolderFor(school ? 'school' : 'demo');
  if (!existsSync(folder)) {
    console.error(
      `There is no data in ${folder}.${school ? '' : ' For the data of a class, add: -- --school'}`,
    );
    process.exit(1);
  }
  // Read by lib/data when it is first used.
  process.env['DUSKBENCH_SCHOOL'] = school ? '1' : '0';
  process.env['DUSKBENCH_DATA'] = folder;
  return { folder, given, words: parsed.positionals };
}
