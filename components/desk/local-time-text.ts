/** "2026-11-01T01:30-05:00" in its parts; empty parts where there is no time yet. */
export function splitLocalTime(localTime: string): {
  date: string;
  time: string;
  offset: string | null;
} {
  const parts = /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})(?::\d{2})?([+-]\d{2}:\d{2}|Z)?$/.exec(
    localTime,
  );
  return { date: parts?.[1] ?? '', time: parts?.[2] ?? '', offset: parts?.[3] ?? null };
}

export const joinLocalTime = (date: string, time: string, offset: string | null): string =>
  `${date}T${time}${offset ?? ''}`;
