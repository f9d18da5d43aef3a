/**
 * Run by the start command after the migrations: the gazetteer and, in the demonstration, its class;
 * for a school, the first teacher's token. The last line of its output is the report, in JSON.
 */
import { chmodSync } from 'node:fs';
import { formatClassCode } from '../lib/auth/class-code';
import { hasDemoAccounts, seedDemo } from '../lib/data/demo';
import { databaseFile, env, readOrCreateSecret } from '../lib/data/env';
import { importPlaces } from '../lib/data/import-places';
import { issueFirstTeacherToken } from '../lib/data/invitations';
import { routes } from '../lib/routes';

type SignIn = { label: string; where: string; fields: Record<string, string> };

async function demoSignIns(): Promise<SignIn[]> {
  const { teacher, student } = await seedDemo();
  const forTeacher = {
    label: 'Teacher',
    where: routes.signIn.teacher(),
    fields: { Email: teacher.email, Password: teacher.password },
  };
  const forStudent = {
    label: `Student (${student.displayName})`,
    where: routes.signIn.student(),
    fields: {
      'Class code': formatClassCode(student.classCode),
      'Card number': String(student.cardNumber),
      'Three words': student.words,
    },
  };
  return student.words === '' ? [forTeacher] : [forTeacher, forStudent];
}

const { mode, dataFolder } = env();
readOrCreateSecret(dataFolder);
// Names and marks are nobody else's business on a computer with several accounts.
chmodSync(databaseFile(dataFolder), 0o600);
if (mode === 'school' && (await hasDemoAccounts())) {
  console.error(
    'This data folder holds accounts of the demonstration, whose passwords everybody knows. ' +
      'Choose another folder with DUSKBENCH_DATA, or remove this one.',
  );
  process.exit(1);
}
await importPlaces();
const signIns = mode === 'demo' ? await demoSignIns() : [];
const firstTeacherToken = mode === 'school' ? await issueFirstTeacherToken() : null;
console.log(JSON.stringify({ signIns, firstTeacherToken }));
