import { afterEach, expect, test, vi, type Mock } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';

const asked = vi.hoisted((): { viewer: Viewer; record: Mock } => ({
  viewer: { kind: 'anonymous' },
  record: vi.fn(() => Promise.resolve({ ok: true, value: [] })),
}));
vi.mock('@/lib/auth/session', () => ({ getViewer: () => Promise.resolve(asked.viewer) }));
vi.mock('@/lib/data/observations', () => ({ recordObservations: asked.record }));
const { POST } = await import('./route');

const teacher: Viewer = { kind: 'teacher', teacherId: 'iris', displayName: 'Iris' };
const params = { params: Promise.resolve({ classId: 'class' }) };
const request = (body: string, type = 'application/json') =>
  new Request('https://school.example/notes', {
    method: 'POST',
    headers: { 'content-type': type },
    body,
  });
const sent = JSON.stringify({ assessor: 'iris', items: [] });

afterEach(() => {
  asked.viewer = { kind: 'anonymous' };
  asked.record.mockClear();
});

test('who is no teacher is refused before a byte is read', async () => {
  const one = request(sent);
  expect((await POST(one, params)).status).toBe(401);
  expect(one.bodyUsed).toBe(false);
});

test('a teacher’s notes are taken under their own name alone', async () => {
  asked.viewer = teacher;
  expect((await POST(request(sent), params)).status).toBe(200);
  expect((await POST(request(sent.replace('iris', 'jo')), params)).status).toBe(401);
  expect(asked.record).toHaveBeenCalledTimes(1);
});

test('what is too long, of another type or no JSON is refused', async () => {
  asked.viewer = teacher;
  const long = JSON.stringify({ assessor: 'iris', items: ['x'.repeat(1_000_000)] });
  expect((await POST(request(long), params)).status).toBe(413);
  expect((await POST(request(sent, 'text/plain'), params)).status).toBe(415);
  for (const body of ['{', '"too"', '[]']) {
    expect((await POST(request(body), params)).status).toBe(400);
  }
  expect(asked.record).not.toHaveBeenCalled();
});
