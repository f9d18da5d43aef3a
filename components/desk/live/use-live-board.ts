'use client';

import { useEffect, useState } from 'react';
import { newCalls } from './live-changes';
import { liveMessageSchema, type LiveBoardView, type LiveMessage } from './live-message';

/** 'lost': no connection, and the browser is trying again. 'over': the server has shown us out. */
export type LiveLine = 'connecting' | 'live' | 'lost' | 'over';
export type LiveNow = {
  board: LiveBoardView;
  line: LiveLine;
  /** The server's clock when it was last heard, ms since 1970. */
  heardMs: number;
  /** The same clock as it must stand now, for "how long ago". */
  nowMs: number;
  /** What was called out last, for a screen reader. */
  said: string;
};

const tickMs = 10_000;
const tryAgainMs = 5000;
/** The server says something every ten seconds. A line that broke without a word is found by its silence. */
const silenceMs = 35_000;

const readMessage = (event: MessageEvent<unknown>): LiveMessage =>
  liveMessageSchema.parse(JSON.parse(String(event.data)));

/** Follows a class's stream. A browser tries again by itself, unless the server answered with an error. */
export function useLiveBoard(
  streamHref: string,
  first: { at: string; board: LiveBoardView },
): LiveNow {
  const [now, setNow] = useState<LiveNow>(() => ({
    board: first.board,
    line: 'connecting',
    heardMs: Date.parse(first.at),
    nowMs: Date.parse(first.at),
    said: '',
  }));

  const firstAt = first.at;
  useEffect(() => {
    let source: EventSource | null = null;
    let retry: ReturnType<typeof setTimeout> | null = null;
    let heardAt = performance.now();
    // The server's clock when it spoke, and this page's own at that moment.
    let spoke = { serverMs: Date.parse(firstAt), here: heardAt };

    const hear = ({ at, board }: LiveMessage): void => {
      const heardMs = Date.parse(at);
      heardAt = performance.now();
      spoke = { serverMs: heardMs, here: heardAt };
      setNow((before) => ({
        board: board ?? before.board,
        line: 'live',
        heardMs,
        nowMs: heardMs,
        // Said until there is something else to say: a line that is emptied is not read again.
        said: (board === undefined ? '' : newCalls(before.board, board)) || before.said,
      }));
    };
    const show = (line: LiveLine): void => {
      setNow((before) => ({ ...before, line }));
    };
    let over = false;
    const connect = (): void => {
      source?.close();
      heardAt = performance.now();
      source = new EventSource(streamHref);
      source.addEventListener('board', (event) => {
        hear(readMessage(event));
      });
      source.addEventListener('heard', (event) => {
        hear(readMessage(event));
      });
      source.addEventListener('signed-out', () => {
        over = true;
        source?.close();
        show('over');
      });
      source.addEventListener('error', () => {
        show('lost');
        if (source?.readyState === EventSource.CLOSED) retry = setTimeout(connect, tryAgainMs);
      });
    };
    connect();
    const tick = setInterval(() => {
      const here = performance.now();
      if (!over && here - heardAt > silenceMs) {
        show('lost');
        connect();
      }
      setNow((before) => ({ ...before, nowMs: spoke.serverMs + (here - spoke.here) }));
    }, tickMs);
    return () => {
      source?.close();
      if (retry !== null) clearTimeout(retry);
      clearInterval(tick);
    };
  }, [streamHref, firstAt]);
  return now;
}
