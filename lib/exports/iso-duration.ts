/**
 * A span of time as ISO 8601 has it, in hours, minutes and seconds: "PT1H2M3.45S". xAPI 1.0.3 part two,
 * 4.6, asks for hundredths of a second at most. Throws on a span below zero, which no work can take.
 */
export function isoDuration(ms: number): string {
  if (!(ms >= 0) || !Number.isFinite(ms)) throw new RangeError(`no span of time: ${String(ms)}`);
  const hundredths = Math.round(ms / 10);
  const hours = Math.floor(hundredths / 360_000);
  const minutes = Math.floor((hundredths % 360_000) / 6000);
  const seconds = (hundredths % 6000) / 100;
  const text = [
    hours === 0 ? '' : `${String(hours)}H`,
    minutes === 0 ? '' : `${String(minutes)}M`,
    seconds === 0 ? '' : `${String(seconds)}S`,
  ].join('');
  return `PT${text === '' ? '0S' : text}`;
}
