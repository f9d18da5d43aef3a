/** The server's clock, passed as the last argument so that tests and replays choose the time. */
export type Clock = { now(): Date };

export const systemClock: Clock = { now: () => new Date() };

export const fixedClock = (instant: string): Clock => ({ now: () => new Date(instant) });
