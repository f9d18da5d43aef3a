import { landingBeside } from '@/lib/faults/where-it-lands';
import { missInWords } from './clock-words';
import type { Overlay, OverlayStar } from './overlay-stars';

/** "15° too far right, 4° too low", to half a degree as an eye would judge it. */
export function landingText({
  name,
  realDirection,
  tubeDirection,
  tube,
  missDeg,
}: OverlayStar): string {
  if (tube.altitudeDeg < 0) return `into the ground, ${missInWords(missDeg)} away`;
  if (missDeg > 60) return `quite elsewhere, ${missInWords(missDeg)} away`;
  const { rightDeg, upDeg } = landingBeside({ hip: 0, name }, realDirection, tubeDirection);
  const parts = [
    sized(rightDeg, 'too far right', 'too far left'),
    sized(upDeg, 'too high', 'too low'),
  ].filter((part) => part !== null);
  return parts.length === 0 ? 'on the star' : parts.join(', ');
}

function sized(deg: number, more: string, less: string): string | null {
  const halves = Math.round(Math.abs(deg) * 2) / 2;
  return halves === 0 ? null : `${String(halves)}° ${deg > 0 ? more : less}`;
}

/** Where the tube landed for each star it was sent to, in words. */
export function LandingList({ overlay }: { overlay: Overlay }) {
  return (
    <ul className="text-sm">
      {overlay.stars
        .filter(({ judged }) => judged)
        .slice(0, 3)
        .map((star) => (
          <li key={star.name}>
            <span className="font-semibold">{star.name}:</span> {landingText(star)}
          </li>
        ))}
    </ul>
  );
}
