import type { RaisedTube } from './tube-facts';

/** How the figures start, on the server and in the browser alike. The clamp is off by so much. */
export const startingOffMm = -24;
/** Balanced level, with its weight above the axis. */
export const startingRaised: RaisedTube = { forwardMm: 0, aboveMm: 16 };
export const startingAltitudeDeg = 20;
