import type { LiveBoardView, LiveTileView } from './live-message';

/** What a teacher would look up for; null where nobody needs anything. */
function call({ state, need, gates }: LiveTileView): string | null {
  if (gates !== null) return `a safety gate failed: ${gates.text}`;
  return state === 'needs-help' && need !== null ? need.text.toLowerCase() : null;
}

/**
 * What is read out when a board takes the place of another: who may need the teacher now and did not
 * before. A student who merely goes on, moves or hands in is seen and not announced.
 */
export function newCalls(before: LiveBoardView, after: LiveBoardView): string {
  const known = new Map(before.tiles.map((tile) => [tile.cardNumber, call(tile)]));
  return after.tiles
    .flatMap((tile) => {
      const now = call(tile);
      return now === null || known.get(tile.cardNumber) === now ? [] : `${tile.label}: ${now}.`;
    })
    .join(' ');
}
