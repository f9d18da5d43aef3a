import { afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { formatClassCode } from '@/lib/auth/class-code';
import { hashSecret } from '@/lib/auth/passwords';
import { getClass, rotateClassCode } from '@/lib/data/classes';
import { db } from '@/lib/data/db';
import { issueCards, type SignInCard } from '@/lib/data/roster';
import { checkCard, checkPassword } from '@/lib/data/sign-in';
import { useSchoolDatabase } from '../support/school-database';
import { codeOf, makeSchool, valueOf, type School } from '../support/school';

useSchoolDatabase();
let school: School;
let cards: SignInCard[];
const password = 'four clear evenings';

beforeAll(async () => {
  school = await makeSchool();
  cards = valueOf(await issueCards(school.owner, school.classId, 'all'));
  await db().teacher.update({
    where: { id: school.owner.teacherId },
    data: { email: 'owner@school.example', passwordHash: await hashSecret(password) },
  });
});

// Failed tries are counted for ten minutes: every test begins an hour after the one before it.
let hour = Date.parse('2026-11-30T09:00:00Z');
beforeEach(() => {
  hour += 3_600_000;
  vi.useFakeTimers({ toFake: ['Date'], now: hour });
});
afterEach(() => {
  vi.useRealTimers();
});

let devices = 0;
const newDevice = () => `device ${(devices += 1)}`;
const card = (index: number): SignInCard => {
  const found = cards[index];
  if (found === undefined) throw new Error('there are three cards');
  return found;
};
const typed = (index: number, change: Partial<SignInCard> = {}) => {
  const { classCode, cardNumber, words } = { ...card(index), ...change };
  return { classCode, cardNumber, words };
};
const from = (device: string | null = newDevice(), address: string | null = null) => ({
  device,
  address,
});

describe('a card', () => {
  test('opens what it belongs to, however it is typed', async () => {
    const { classCode, words } = card(0);
    const { studentId } = valueOf(await checkCard(typed(0), from()));
    expect(studentId).toBe(school.ann.studentId);
    const carelessly = {
      classCode: ` ${formatClassCode(classCode).toLowerCase()} `,
      cardNumber: ' 1 ',
      words: words.toUpperCase().replaceAll(' ', '-'),
    };
    expect(valueOf(await checkCard(carelessly, from())).studentId).toBe(school.ann.studentId);
  });

  test('whichever part is wrong, the answer is the same', async () => {
    const wrong = [
      typed(0, { words: 'maple comet otter' }),
      typed(0, { cardNumber: 2 }),
      typed(0, { cardNumber: 77 }),
      typed(0, { classCode: 'ZZZZZZZZ' }),
      { classCode: 5, cardNumber: 'one' },
      null,
    ];
    const answers = await Promise.all(wrong.map((input) => checkCard(input, from())));
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(answers[0]).toMatchObject({ ok: false, problem: { code: 'sign-in-refused' } });
  });

  test('a card that does not exist costs a hash check all the same', async () => {
    // Warm up: the decoy is made once.
    await checkCard(typed(0, { cardNumber: 76 }), from());
    const cost = async (input: unknown) => {
      const before = process.cpuUsage();
      for (let round = 0; round < 4; round += 1) await checkCard(input, from());
      const { user, system } = process.cpuUsage(before);
      return user + system;
    };
    const unknown = await cost(typed(0, { cardNumber: 77 }));
    const known = await cost(typed(1, { words: 'maple comet otter' }));
    // Without the check it would cost a tenth; computing time, so that a busy machine plays no part.
    expect(unknown).toBeGreaterThan(known / 2);
  });

  test('the words are not in the database', async () => {
    const students = await db().student.findMany({ select: { secretHash: true } });
    for (const { secretHash } of students.filter((student) => student.secretHash !== null)) {
      expect(secretHash).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
    }
    expect(JSON.stringify(students)).not.toContain(card(0).words.split(' ')[0]);
  });

  test('a new card ends the old one; a new code ends the old code', async () => {
    const old = typed(2);
    const [fresh] = valueOf(await issueCards(school.owner, school.classId, [school.cy.studentId]));
    if (fresh === undefined) throw new Error('one card was asked for');
    expect(codeOf(await checkCard(old, from()))).toBe('sign-in-refused');
    expect(codeOf(await checkCard({ ...fresh }, from()))).toBe('ok');
    const { code } = valueOf(await rotateClassCode(school.owner, school.classId));
    expect((await getClass(school.owner, school.classId))?.code).toBe(code);
    expect(codeOf(await checkCard({ ...fresh }, from()))).toBe('sign-in-refused');
    expect(codeOf(await checkCard({ ...fresh, classCode: code }, from()))).toBe('ok');
    cards = cards.map((each) => ({ ...(each.cardNumber === 3 ? fresh : each), classCode: code }));
  });
});

describe('failed tries are counted', () => {
  const wrongWords = { words: 'maple comet otter' };

  test('by card: after ten, from whatever device, the right words wait ten minutes', async () => {
    for (let round = 0; round < 10; round += 1) {
      expect(codeOf(await checkCard(typed(0, wrongWords), from()))).toBe('sign-in-refused');
    }
    expect(codeOf(await checkCard(typed(0), from()))).toBe('too-many-tries');
    expect(codeOf(await checkCard(typed(1), from()))).toBe('ok');
    vi.setSystemTime(hour + 601_000);
    expect(codeOf(await checkCard(typed(0), from()))).toBe('ok');
  });

  test('by device: after ten, whatever card', async () => {
    const device = newDevice();
    for (let round = 0; round < 10; round += 1) {
      const guess = typed(0, { ...wrongWords, cardNumber: 100 + round });
      expect(codeOf(await checkCard(guess, from(device)))).toBe('sign-in-refused');
    }
    expect(codeOf(await checkCard(typed(1), from(device)))).toBe('too-many-tries');
    expect(codeOf(await checkCard(typed(1), from()))).toBe('ok');
  });

  test('by address: after sixty, and not before', async () => {
    const address = '192.0.2.7';
    for (let round = 0; round < 60; round += 1) {
      const guess = typed(0, { ...wrongWords, cardNumber: 200 + round });
      expect(codeOf(await checkCard(guess, from(newDevice(), address)))).toBe('sign-in-refused');
    }
    expect(codeOf(await checkCard(typed(1), from(newDevice(), address)))).toBe('too-many-tries');
    expect(codeOf(await checkCard(typed(1), from(newDevice(), '192.0.2.8')))).toBe('ok');
  });

  test('by address: a device that keeps failing counts once, so thirty students with two typos each all sign in', async () => {
    const address = '192.0.2.10';
    const students = Array.from({ length: 30 }, (_, index) => ({
      device: newDevice(),
      // Three cards, so that many students have to share each: the typos are in the card number.
      cardNumber: 300 + 2 * index,
      own: index % 3,
    }));
    for (const { device, cardNumber } of students) {
      for (const wrong of [cardNumber, cardNumber + 1]) {
        const guess = typed(0, { cardNumber: wrong });
        expect(codeOf(await checkCard(guess, from(device, address)))).toBe('sign-in-refused');
      }
    }
    for (const { device, own } of students) {
      expect(codeOf(await checkCard(typed(own), from(device, address)))).toBe('ok');
    }
  });

  test('by address: without a device each card counts once', async () => {
    const address = '192.0.2.11';
    for (let round = 0; round < 60; round += 1) {
      const guess = typed(0, { ...wrongWords, cardNumber: 400 + round });
      expect(codeOf(await checkCard(guess, from(null, address)))).toBe('sign-in-refused');
      expect(codeOf(await checkCard(guess, from(null, address)))).toBe(
        round < 59 ? 'sign-in-refused' : 'too-many-tries',
      );
    }
  });

  test('guesses sent side by side do not slip through', async () => {
    const answers = await Promise.all(
      Array.from({ length: 25 }, () => checkCard(typed(1, wrongWords), from())),
    );
    expect(answers.filter((answer) => codeOf(answer) === 'sign-in-refused')).toHaveLength(10);
  });

  test('a whole class behind one address signs in unhindered, together and again and again', async () => {
    const address = '192.0.2.9';
    for (let round = 0; round < 25; round += 1) {
      const answers = await Promise.all(
        [0, 1, 2].map((index) => checkCard(typed(index), from('shared', address))),
      );
      expect(answers.map(codeOf)).toEqual(['ok', 'ok', 'ok']);
    }
  });
});

describe('a teacher', () => {
  test('signs in with address and password; both wrong ways look alike', async () => {
    const right = { email: ' Owner@School.example ', password };
    expect(valueOf(await checkPassword(right, from())).teacherId).toBe(school.owner.teacherId);
    const wrong = await checkPassword({ email: 'owner@school.example', password: 'x' }, from());
    const unknown = await checkPassword({ email: 'nobody@school.example', password }, from());
    expect(wrong).toEqual(unknown);
    expect(codeOf(wrong)).toBe('sign-in-refused');
  });

  test('is held back after ten failures', async () => {
    for (let round = 0; round < 10; round += 1) {
      await checkPassword({ email: 'owner@school.example', password: 'x' }, from());
    }
    expect(codeOf(await checkPassword({ email: 'OWNER@school.example', password }, from()))).toBe(
      'too-many-tries',
    );
  });
});

test('the security log says what happened and holds no address', async () => {
  const events = await db().securityEvent.findMany();
  const kinds = new Set(events.map(({ kind }) => kind));
  for (const kind of ['signed-in', 'sign-in-failed', 'sign-in-throttled', 'cards-issued']) {
    expect(kinds).toContain(kind);
  }
  expect(JSON.stringify(events)).not.toContain('192.0.2');
  expect(JSON.stringify(events)).not.toContain('maple');
});
