import { afterEach, beforeEach, describe, expect, it, test, vi } from 'vitest';
import type { Waiting } from '@/lib/mastery/sign-off-queue';
import type { SignOffSheet } from '@/lib/mastery/sign-off-sheet';
import {
  countOthersWaiting,
  countUnread,
  countWaiting,
  forgetOldSheets,
  forgetQueue,
  forgetSheetsOfOthers,
  keepSheet,
  keptSheet,
  readQueue,
  waitingOf,
  writeQueue,
} from './kept-on-device';

const owner = { classId: 'class', teacherId: 'teacher' };
const queueName = 'duskbench-sign-off-queue:class:teacher';
const now = new Date('2026-12-05T20:00:00Z');
const said = {
  studentId: 'ann',
  skill: 'level' as const,
  level: 3 as const,
  gates: [],
  prompts: 0,
  note: 'shy in the dark',
};
const waiting: Waiting = {
  item: {
    ...said,
    kind: 'note',
    key: 'a'.repeat(32),
    instrument: 'Wren',
    over: null,
    conditions: { light: 'night', cloud: 'clear' },
    observedAt: now.toISOString(),
  },
  tried: false,
  state: { kind: 'queued' },
};

/** A browser's storage lists what it holds as its own properties. */
class Disk {
  [name: string]: unknown;
  getItem(name: string): string | null {
    const found = this[name];
    return typeof found === 'string' ? found : null;
  }
  setItem(name: string, text: string): void {
    this[name] = text;
  }
  removeItem(name: string): void {
    Reflect.deleteProperty(this, name);
  }
}

/** One that has room for so many characters, names and texts together. */
class SmallDisk extends Disk {
  #room = Infinity;
  fillUp(): void {
    this.#room = this.#used();
  }
  override setItem(name: string, text: string): void {
    const before = this.getItem(name);
    super.setItem(name, text);
    if (this.#used() <= this.#room) return;
    if (before === null) this.removeItem(name);
    else super.setItem(name, before);
    throw new Error('The quota has been exceeded.');
  }
  #used(): number {
    return Object.entries(this).join('').length;
  }
}

let disk: Disk;
beforeEach(() => {
  disk = new Disk();
  vi.stubGlobal('window', { localStorage: disk });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

test('a note that cannot be read is put aside once, and the others stay in the queue', () => {
  const strange = { item: { kind: 'note', of: 'tomorrow' } };
  disk.setItem(queueName, JSON.stringify([strange, waiting]));
  expect(countWaiting('teacher')).toBe(2);
  expect(readQueue(owner)).toEqual([waiting]);
  expect(readQueue(owner)).toEqual([waiting]);
  expect(countUnread(owner)).toBe(1);
  expect(countWaiting('teacher')).toBe(1);
});

test('one that is put aside later takes nobody’s place', () => {
  for (const of of ['one', 'two', 'three']) {
    disk.setItem(queueName, JSON.stringify([{ of }]));
    expect(readQueue(owner)).toEqual([]);
  }
  writeQueue(owner, []);
  expect(countUnread(owner)).toBe(3);
  expect(JSON.stringify(disk)).toContain('two');
});

describe('on a device that is full to the last character', () => {
  const strange = ['one', 'two', 'three'].map((of) => ({ of }));
  let small: SmallDisk;
  beforeEach(() => {
    small = new SmallDisk();
    vi.stubGlobal('window', { localStorage: small });
    small.setItem(queueName, JSON.stringify([...strange, waiting]));
    small.fillUp();
  });
  const here = () => JSON.stringify(small);
  const expectAll = () => {
    for (const { of } of strange) expect(here().split(`\\"${of}\\"`)).toHaveLength(2);
    expect(countUnread(owner)).toBe(3);
  };

  it('no note that cannot be read is lost, nor one that can', () => {
    expect(readQueue(owner)).toEqual([waiting]);
    expectAll();
    expect(readQueue(owner)).toEqual([waiting]);
    expectAll();
  });

  it('they stay when the others have been sent, and are given up with the class’s notes', () => {
    expect(writeQueue(owner, readQueue(owner))).toBe(true);
    expectAll();
    expect(writeQueue(owner, [])).toBe(true);
    expect(readQueue(owner)).toEqual([]);
    expectAll();
    forgetQueue(owner);
    expect(countUnread(owner)).toBe(0);
    expect(here()).toBe('{}');
  });
});

test('a page that went while it put notes aside has put none aside twice', () => {
  const text = JSON.stringify([{ of: 'tomorrow' }, waiting]);
  disk.setItem(queueName, text);
  readQueue(owner);
  disk.setItem(queueName, text);
  expect(countUnread(owner)).toBe(1);
  expect(readQueue(owner)).toEqual([waiting]);
  expect(countUnread(owner)).toBe(1);
});

const sheet: SignOffSheet = {
  classId: 'class',
  className: '9b',
  timeZone: 'Europe/London',
  needed: 3,
  teacherId: 'teacher',
  telescopes: [],
  groups: [],
  students: [],
  agreement: { pairs: 1, alike: 1, weighted: null, table: [] },
  notes: [
    { ...said, key: 'b'.repeat(32), evening: '2026-12-04', mine: false },
    { ...said, key: 'c'.repeat(32), evening: '2026-12-04', mine: true },
  ],
};
const tomorrow = new Date('2026-12-06T12:00:00Z');

test('a sheet is kept without the words beside the levels, and without what two assessors make of it', () => {
  expect(keepSheet(owner, sheet, tomorrow)).toBe(true);
  expect(JSON.stringify(disk)).not.toContain('shy');
  expect(keptSheet(owner, now)?.sheet.notes).toMatchObject([{ level: 3 }, { level: 3 }]);
  expect(keptSheet(owner, now)?.sheet.agreement).toBeNull();
});

test('a sheet that an earlier version of the page kept opens under the new one', () => {
  const until = tomorrow.toISOString();
  const earlier = { ...sheet, agreement: { pairs: 1, alike: 1, weighted: null } };
  disk.setItem('duskbench-sign-off-sheet:class:teacher', JSON.stringify({ until, sheet: earlier }));
  expect(keptSheet(owner, now)?.sheet).toMatchObject({ className: '9b', agreement: null });
});

describe('on a phone that two teachers share', () => {
  const other = { classId: 'class', teacherId: 'colleague' };

  it('the list that one kept is not there for who signs in next', () => {
    keepSheet(owner, sheet, tomorrow);
    keepSheet(other, sheet, tomorrow);
    expect(forgetSheetsOfOthers('colleague')).toBe(false);
    expect(keptSheet(owner, now)).toBeNull();
    expect(keptSheet(other, now)).not.toBeNull();
    expect(forgetSheetsOfOthers('somebody else')).toBe(true);
  });

  it('what the one has noted waits, and the other is told how much', () => {
    writeQueue(owner, [waiting]);
    expect(countOthersWaiting('colleague')).toBe(1);
    expect(countOthersWaiting('teacher')).toBe(0);
    expect(waitingOf('teacher')).toEqual([{ ...owner, count: 1 }]);
    expect(waitingOf('colleague')).toEqual([]);
  });
});

test('a list is gone at noon of the next day, and says that nothing is left to open', () => {
  keepSheet(owner, sheet, tomorrow);
  expect(forgetOldSheets(now)).toBe(false);
  expect(forgetOldSheets(tomorrow)).toBe(true);
  expect(JSON.stringify(disk)).not.toContain('9b');
  expect(forgetOldSheets(tomorrow)).toBe(false);
});

test('giving up a class’s notes takes those along that could not be read, and no others', () => {
  const elsewhere = { classId: 'another', teacherId: 'teacher' };
  writeQueue(elsewhere, [waiting]);
  disk.setItem(queueName, JSON.stringify([{ of: 'tomorrow' }, waiting]));
  readQueue(owner);
  forgetQueue(owner);
  expect(readQueue(owner)).toEqual([]);
  expect(countUnread(owner)).toBe(0);
  expect(waitingOf('teacher')).toEqual([{ ...elsewhere, count: 1 }]);
});
