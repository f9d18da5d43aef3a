import { fieldPlaceInWords } from '@/components/sky/clock-direction';
import { positionInWords } from '@/components/sky/position-words';
import { angleInWords } from '@/components/lab/run/run-words';
import { Panel } from '@/components/ui/panel';
import type { RunStarResult } from '@/lib/grading/run-result';
import { asSeen, type FieldOffset } from '@/lib/optics/image-orientation';
import { centringSteps } from './centring-path';
import { CentringReplay } from './centring-replay';
import { FieldPicture, type FieldPictureLight } from './field-picture';
import type { DebriefSky } from './run-debrief-sky';
import { approachInWords, clockText, orientationText, reallyInWords } from './run-result-words';

/** One confirmed star: what was meant, what was there, how the way to it went. */
export function RunResultStar({
  star,
  which,
  sky,
}: {
  star: RunStarResult;
  which: 1 | 2;
  sky: DebriefSky;
}) {
  const steps = centringSteps(star.path, star, {
    latitudeDeg: sky.scenario.place.latitudeDeg,
    refractionScale: sky.frame.refractionScale,
  });
  const meantAt = steps.at(-1)?.starBesideTube ?? null;
  const lights = lightsInField(star, meantAt, sky);
  const [first] = star.path;
  const last = star.path.at(-1);
  const rows: { head: string; text: string }[] = [
    {
      head: 'Meant',
      text: `${star.name}, ${positionInWords(star.azimuthDeg, star.altitudeDeg)} (azimuth ${star.azimuthDeg.toFixed(1)}°, altitude ${star.altitudeDeg.toFixed(1)}°)`,
    },
    { head: 'Really in the eyepiece', text: reallyInWords(star) },
    {
      head: 'Place in the field',
      text: lights.map((light) => `${light.name} ${placeText(light, star)}`).join('; ') || 'none',
    },
    { head: 'Final approach', text: approachInWords(star) },
    {
      head: 'The way there',
      text:
        first === undefined || last === undefined || steps[0] === undefined
          ? 'not known'
          : `${clockText(last.atMs - first.atMs)}, from ${angleInWords(steps[0].awayArcmin)} away`,
    },
  ];
  return (
    <Panel title={`The ${which === 1 ? 'first' : 'second'} star: ${star.name}`} level={3}>
      <p className={star.right ? 'font-semibold text-good' : 'font-semibold text-danger'}>
        {star.right ? 'It was the right star.' : 'It was not the star that was meant.'}
      </p>
      <div className="table-frame mt-3 overflow-x-auto">
        <table>
          <caption className="sr-only">What was confirmed as {star.name}</caption>
          <tbody>
            {rows.map(({ head, text }) => (
              <tr key={head}>
                <th scope="row">{head}</th>
                <td>{text}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div className="mt-4 grid gap-6 sm:grid-cols-2">
        <figure>
          <h4 className="mb-2 font-semibold">In the eyepiece</h4>
          <FieldPicture
            title={`The eyepiece when ${star.name} was confirmed. ${reallyInWords(star)}`}
            lights={lights}
            fieldRadiusArcmin={star.fieldRadiusArcmin}
          />
          <figcaption className="text-sm text-soft">
            {orientationText(sky.kit)} Within the dotted ring the centring has full marks.
          </figcaption>
        </figure>
        <div>
          <h4 className="mb-2 font-semibold">The way there</h4>
          <CentringReplay
            starName={star.name}
            steps={steps}
            fieldRadiusArcmin={star.fieldRadiusArcmin}
          />
        </div>
      </div>
    </Panel>
  );
}

const placeText = (light: FieldOffset, { fieldRadiusArcmin }: RunStarResult): string =>
  Math.hypot(light.rightArcmin, light.upArcmin) > fieldRadiusArcmin
    ? 'outside'
    : fieldPlaceInWords(light, fieldRadiusArcmin);

/** The star that was meant, and what was taken for it, where this tube's eyepiece shows them. */
function lightsInField(
  star: RunStarResult,
  meantAt: FieldOffset | null,
  sky: DebriefSky,
): FieldPictureLight[] {
  const { orientation } = sky.kit;
  const really = star.offsetOnSky;
  const lights: FieldPictureLight[] = [];
  const meant = star.right || star.reallyName === null ? (really ?? meantAt) : meantAt;
  if (meant !== null) lights.push({ ...asSeen(meant, orientation), name: star.name, meant: true });
  if (!star.right && star.reallyName !== null && really !== undefined)
    lights.push({ ...asSeen(really, orientation), name: star.reallyName, meant: false });
  return lights;
}
