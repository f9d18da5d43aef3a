import type { Result } from '@/lib/data/result';

export type SubmitAnswer<Submission, LabResult> = (input: {
  submission: Submission;
  idempotencyKey: string;
}) => Promise<Result<{ result: LabResult | null; late: boolean }>>;

export type SendState<LabResult> =
  | { state: 'not-sent' }
  | { state: 'sending' }
  /** No answer came: it may or may not have arrived. The same key is sent again. */
  | { state: 'no-answer' }
  | { state: 'refused'; message: string }
  | { state: 'done'; result: LabResult | null; late: boolean };

const keyLength = 32;
const keyName = (attemptKey: string): string => `duskbench-send-${attemptKey}`;

/**
 * 128 random bits in hexadecimal. Not `randomUUID`: browsers have it only on https and on this
 * computer itself, and many a school serves its classroom over plain http.
 */
function newKey(): string {
  const bytes = window.crypto.getRandomValues(new Uint8Array(keyLength / 2));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * The key under which an attempt's submission counts once, however often it is sent. It outlives a
 * reload, so that a page reopened after a lost connection sends the same one.
 */
function keyOf(attemptKey: string, content: string): string {
  const made = newKey();
  try {
    const kept = window.sessionStorage.getItem(keyName(attemptKey));
    if (kept?.slice(keyLength) === content) return kept.slice(0, keyLength);
    window.sessionStorage.setItem(keyName(attemptKey), made + content);
  } catch {
    // A browser may refuse storage altogether: the key then lives as long as the page.
  }
  return made;
}

/** Sends a submission; after a lost connection, the same one again with the same key. */
export class SubmissionSender<Submission, LabResult> {
  private shown: SendState<LabResult> = { state: 'not-sent' };
  private key: { of: string; value: string } | null = null;
  private readonly listeners = new Set<() => void>();

  constructor(
    private readonly attemptKey: string,
    private readonly submit: SubmitAnswer<Submission, LabResult>,
  ) {}

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => {
      this.listeners.delete(listener);
    };
  };

  readonly state = (): SendState<LabResult> => this.shown;

  async send(submission: Submission): Promise<void> {
    if (this.shown.state === 'sending' || this.shown.state === 'done') return;
    const content = JSON.stringify(submission);
    if (this.key?.of !== content)
      this.key = { of: content, value: keyOf(this.attemptKey, content) };
    const idempotencyKey = this.key.value;
    this.show({ state: 'sending' });
    const answer = await this.submit({ submission, idempotencyKey }).catch(() => null);
    if (answer === null) this.show({ state: 'no-answer' });
    else if (answer.ok) this.show({ state: 'done', ...answer.value });
    else this.show({ state: 'refused', message: answer.problem.message });
  }

  private show(next: SendState<LabResult>): void {
    this.shown = next;
    for (const listener of this.listeners) listener();
  }
}
