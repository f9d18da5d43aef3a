import 'server-only';
import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible';

/** Seconds in which failed tries are counted. */
const windowSeconds = 600;
const limiter = (keyPrefix: string, points: number) =>
  new RateLimiterMemory({ keyPrefix, points, duration: windowSeconds });

const byAccount = limiter('account', 10);
const byDevice = limiter('device', 10);
const byAddress = limiter('address', 60);
/** One failure of a device, ten minutes long, is all that its address is charged with. */
const chargedToAddress = limiter('charged', 1);

/** Whom a try is counted against. The address is null where it cannot be known. */
export type TrySource = { account: string; device: string | null; address: string | null };

/** consume() refuses by throwing its answer; anything else it throws is a bug. */
async function takes(bucket: RateLimiterMemory, key: string): Promise<boolean> {
  try {
    await bucket.consume(key);
    return true;
  } catch (refusal) {
    if (refusal instanceof RateLimiterRes) return false;
    throw refusal;
  }
}

/**
 * Whether another try is allowed; if so, a way to say that it succeeded. A try counts against the
 * account and the device from its start, so that guesses sent side by side do not slip through, and
 * is given back when it succeeds. The address of a school is shared by many, so there a try counts
 * only once it has failed, and each device only once: any number of pupils may come in together, and
 * a class that mistypes does not shut out the next. Whoever drops the cookie with each guess is a new
 * device each time; whoever keeps it meets the device's own limit.
 */
export async function beginTry(
  source: TrySource,
): Promise<
  { allowed: false } | { allowed: true; succeeded(): Promise<void>; failed(): Promise<void> }
> {
  if (source.address !== null) {
    const used = await byAddress.get(source.address);
    if (used !== null && used.consumedPoints >= byAddress.points) return { allowed: false };
  }
  if (!(await takes(byAccount, source.account))) return { allowed: false };
  if (source.device !== null && !(await takes(byDevice, source.device))) {
    await byAccount.reward(source.account);
    return { allowed: false };
  }
  return {
    allowed: true,
    async succeeded() {
      await byAccount.reward(source.account);
      if (source.device !== null) await byDevice.reward(source.device);
    },
    async failed() {
      const { account, device, address } = source;
      if (address === null) return;
      if (await takes(chargedToAddress, `${address} ${device ?? account}`)) {
        await byAddress.penalty(address);
      }
    },
  };
}

/**
 * Rounds are made for anybody, and each costs the server a tenth of a second or more. This many a
 * network in ten minutes are beyond any class at work, and below what would hold the server up.
 */
const roundsOfAddress = limiter('rounds', 400);

/** Whether one more round may be made or marked for a visitor from this address. */
export const mayMakeRound = (address: string | null): Promise<boolean> =>
  takes(roundsOfAddress, address ?? 'unknown');

/** A question costs a hundredth of a round: a class that practises on one network asks for many. */
const questionsOfAddress = limiter('questions', 4000);

/** Whether one more question may be drawn or marked for a visitor from this address. */
export const mayAskQuestion = (address: string | null): Promise<boolean> =>
  takes(questionsOfAddress, address ?? 'unknown');
