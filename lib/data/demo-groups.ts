import 'server-only';
import type { Viewer } from '../auth/policy';
import type { Clock } from './clock';
import { must } from './demo-work';
import { getGroups, saveGroups } from './groups';

const tables = [
  { name: 'Wren', kitId: 'wren' },
  { name: 'Heron', kitId: 'heron' },
  { name: 'Owl', kitId: 'owl' },
] as const;

/** A table for each telescope, dealt to in the order of the cards; the last student came after that. */
export async function makeDemoGroups(
  teacher: Viewer,
  classId: string,
  studentIds: readonly string[],
  clock: Clock,
): Promise<void> {
  const before = await getGroups(teacher, classId);
  if (before === null) throw new Error('the demo teacher does not see the demo class');
  const dealt = studentIds.slice(0, -1);
  const groups = tables.map((table, place) => ({
    ...table,
    groupId: null,
    studentIds: dealt.filter((_, index) => index % tables.length === place),
  }));
  must(await saveGroups(teacher, classId, { version: before.version, groups }, clock));
}
