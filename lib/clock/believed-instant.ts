/** What was told to the mount's computer of the time. */
export type EnteredTime = {
  /** The wall clock, "2026-12-05T19:30" or with seconds. */
  localTime: string;
  /** Hours ahead of UTC in winter, in minutes: east is positive. */
  zoneOffsetMinutes: number;
  /** Adds to the offset what summer time adds in the zone. */
  summerTime: boolean;
  /** Of the zone, on or off: 60 nearly everywhere. */
  summerTimeMinutes: number;
};

export type BelievedInstant =
  { ok: true; instant: string } | { ok: false; reason: 'bad-format' | 'no-such-date' };

const wallClock = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})(?::(\d{2}))?$/;

/**
 * The instant (UTC, ISO 8601) that the computer makes of what was entered. It stands apart from the sky
 * that follows from it, so that a page may ask it without an ephemeris.
 */
export function believedInstant(entered: EnteredTime): BelievedInstant {
  const match = wallClock.exec(entered.localTime);
  if (match === null) return { ok: false, reason: 'bad-format' };
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = match
    .slice(1)
    .map((part) => Number((part as string | undefined) ?? 0));
  const asUtc = new Date(Date.UTC(year, month - 1, day, hour, minute, second));
  // 30 February rolls over into March: what comes back must be what went in.
  if (!asUtc.toISOString().startsWith(entered.localTime)) {
    return { ok: false, reason: 'no-such-date' };
  }
  const aheadMinutes =
    entered.zoneOffsetMinutes + (entered.summerTime ? entered.summerTimeMinutes : 0);
  return { ok: true, instant: new Date(asUtc.getTime() - aheadMinutes * 60_000).toISOString() };
}
