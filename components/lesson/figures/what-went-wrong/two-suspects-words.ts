import { suspects, type TestLanding, type testLandings } from './two-suspects-facts';

const part = (value: number, more: string, less: string): string =>
  Math.abs(value) < 0.05 ? '' : `${Math.abs(value).toFixed(1)}° ${value > 0 ? more : less}`;

function landing({ rightDeg, upDeg }: TestLanding): string {
  const parts = [part(upDeg, 'high', 'low'), part(rightDeg, 'right', 'left')].filter(
    (one) => one !== '',
  );
  return parts.length === 0 ? 'on the star' : parts.join(', ');
}

/** What each suspect would do at the test star, and whether that tells. */
export function suspectsWords(landings: ReturnType<typeof testLandings>): string {
  const { apartDeg } = landings;
  const each = suspects
    .map(({ id, name, letter }) => `${letter}: ${name.toLowerCase()}, ${landing(landings[id])}`)
    .join('. ');
  const verdict =
    apartDeg < 1
      ? 'Less than a degree apart: this slew would tell you nothing.'
      : apartDeg < 4
        ? `${apartDeg.toFixed(1)}° apart. It would do; another part of the sky tells more.`
        : `${apartDeg.toFixed(1)}° apart. A good test: you cannot miss the difference.`;
  return `${each}. ${verdict}`;
}
