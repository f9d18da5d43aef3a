import 'server-only';
import { randomBytes } from 'node:crypto';
import { hashSecret } from '../auth/passwords';
import type { Viewer } from '../auth/policy';
import type { Clock } from './clock';
import { db } from './db';

const email = 'colleague@duskbench.example';
const displayName = 'Morgan Thwaite';

/** A second invented teacher of the class, so that two have assessed. Nobody knows the password. */
export async function joinDemoColleague(classId: string, clock: Clock): Promise<Viewer> {
  const passwordHash = await hashSecret(randomBytes(32).toString('base64url'));
  const { id: teacherId } = await db().teacher.upsert({
    where: { email },
    create: { email, displayName, passwordHash, isDemo: true, createdAt: clock.now() },
    update: {},
    select: { id: true },
  });
  await db().classMember.create({ data: { classId, teacherId, role: 'teacher' } });
  return { kind: 'teacher', teacherId, displayName };
}
