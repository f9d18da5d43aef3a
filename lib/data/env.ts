import 'server-only';
import { createHmac, randomBytes } from 'node:crypto';
import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';

const flag = z
  .enum(['0', '1', 'false', 'true', ''])
  .default('')
  .transform((value) => value === '1' || value === 'true');

const envSchema = z
  .object({
    DUSKBENCH_SCHOOL: flag,
    DUSKBENCH_DATA: z.string().min(1).optional(),
    /** The address students type, when it is not the one the server listens on. */
    DUSKBENCH_PUBLIC_URL: z.url().optional(),
    /** Only behind a reverse proxy of one's own: believe its X-Forwarded-For. */
    DUSKBENCH_TRUST_PROXY: flag,
  })
  .transform((raw) => ({
    mode: raw.DUSKBENCH_SCHOOL ? ('school' as const) : ('demo' as const),
    dataFolder: path.resolve(
      raw.DUSKBENCH_DATA ?? (raw.DUSKBENCH_SCHOOL ? 'data/school' : 'data/demo'),
    ),
    publicUrl: raw.DUSKBENCH_PUBLIC_URL ?? null,
    secureCookies: raw.DUSKBENCH_PUBLIC_URL?.startsWith('https://') ?? false,
    trustProxy: raw.DUSKBENCH_TRUST_PROXY,
  }));
export type Env = z.output<typeof envSchema>;

/** Throws with the variable's name when one is wrong: better at the start than in the middle. */
export function parseEnv(variables: Readonly<Record<string, string | undefined>>): Env {
  const parsed = envSchema.safeParse(variables);
  if (parsed.success) return parsed.data;
  throw new Error(`The settings of the environment are wrong.\n${z.prettifyError(parsed.error)}`);
}

let parsedEnv: Env | undefined;
/** The settings of this process, read once. */
export const env = (): Env => (parsedEnv ??= parseEnv(process.env));

export const databaseFile = (dataFolder: string): string =>
  path.join(dataFolder, 'duskbench.sqlite');

/** 32 random bytes beside the database, made at the first start, readable by its owner alone. */
export function readOrCreateSecret(dataFolder: string): string {
  const file = path.join(dataFolder, 'secret');
  mkdirSync(dataFolder, { recursive: true });
  try {
    // 'wx' fails when the file is there, so two processes that start together agree on one secret.
    writeFileSync(file, randomBytes(32).toString('hex'), { flag: 'wx', mode: 0o600 });
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
    chmodSync(file, 0o600);
  }
  const secret = readFileSync(file, 'utf8').trim();
  if (!/^[0-9a-f]{64}$/.test(secret)) {
    throw new Error('The file "secret" in the data folder is damaged: restore it from the backup.');
  }
  return secret;
}

let secret: string | undefined;

/**
 * HMAC-SHA-256 of the parts under this installation's secret, in hex. The parts are joined by a
 * character that none of them contains, so that no two lists give the same text.
 */
export function hmacOf(...parts: readonly (string | number)[]): string {
  secret ??= readOrCreateSecret(env().dataFolder);
  return createHmac('sha256', secret).update(parts.join('|')).digest('hex');
}
