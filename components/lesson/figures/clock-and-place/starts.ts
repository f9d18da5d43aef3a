/** How the figures start, on the server and in the browser alike. The evening is the lesson's own, in UTC. */
export const startingMs = Date.UTC(2026, 11, 5, 20);
export const startingLatitudeDeg = 52;
export const startingStar = 'Aldebaran';
export const startingError: ToldWrong = { clockMinutes: 60, longitudeDeg: 0, latitudeDeg: 0 };
export const toldRight: ToldWrong = { clockMinutes: 0, longitudeDeg: 0, latitudeDeg: 0 };
export const startingPlace = 'Halifax, Nova Scotia';

/** What a mount was told, less what is true: minutes of the clock, degrees east and north. */
export type ToldWrong = { clockMinutes: number; longitudeDeg: number; latitudeDeg: number };
