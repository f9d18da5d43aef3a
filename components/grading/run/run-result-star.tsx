import { angleInWords } from '@/components/sky/angle-words';
import { fieldPlaceInWords } from '@/components/sky/clock-direction';
import { positionInWords } from '@/components/sky/position-words';
import { Panel } from '@/components/ui/panel';
import type { RunStarResult } from '@/lib/grading/run-result';
import { asSeen, type FieldOffset } from '@/lib/optics/image-orientation';
import { centringSteps, type CentringStep } from './centring-path';
import type { TakenForIt } from './centring-picture';
import { CentringReplay } from './centring-replay';
import { FieldPicture, type FieldPictureLight } from './field-picture';
import type { DebriefSky } from './run-debrief-sky';
import {
  approachInWords,
  besideInWords,
  clockText,
  confirmedInWords,
  orientationText,
} from './run-result-words';

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
  const atConfirm = steps.at(-1) ?? null;
  const confirmed = confirmedInWords(star, atConfirm?.awayArcmin ?? null);
  const lights = lightsInField(star, atConfirm?.starBesideTube ?? null, sky);
  const [first] = star.path;
  const last = star.path.at(-1);
  const rows: { head: string; text: string }[] = [
    {
      head: 'Meant',
      text: `${star.name}, ${positionInWords(star.azimuthDeg, star.altitudeDeg)} (azimuth ${star.azimuthDeg.toFixed(1)}°, altitude ${star.altitudeDeg.toFixed(1)}°)`,
    },
    {
      head: 'In the eyepiece',
      text:
        lights
          .filter((light) => isInField(light, star))
          .map((light) => `${light.name} ${fieldPlaceInWords(light, star.fieldRadiusArcmin)}`)
          .join('; ') || 'no star',
    },
    ...(star.right || atConfirm === null
      ? []
      : [
          {
            head: `Where ${star.name} was`,
            text: `${besideInWords(atConfirm.starBesideTube)}, from where the tube pointed`,
          },
        ]),
    {
      head: 'The eyepiece’s field',
      text: `reaches ${angleInWords(star.fieldRadiusArcmin)} from its middle`,
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
    <Panel
      title={`The ${which === 1 ? 'first' : 'second'} star: ${star.name}`}
      level={3}
      className="keep-together"
    >
      <p className={star.right ? 'font-semibold text-good' : 'font-semibold text-danger'}>
        {confirmed}
      </p>
      <div className="mt-3 space-y-4 print:grid print:grid-cols-[minmax(0,1fr)_9cm] print:items-start print:gap-4 print:space-y-0">
        <div className="table-frame overflow-x-auto">
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
        <div className="grid gap-6 sm:grid-cols-2 print:grid-cols-2 print:gap-4">
          <figure>
            <h4 className="mb-2 font-semibold">In the eyepiece</h4>
            <FieldPicture
              title={`The eyepiece when ${star.name} was confirmed. ${confirmed}`}
              lights={lights}
              fieldRadiusArcmin={star.fieldRadiusArcmin}
            />
            <figcaption className="text-sm text-soft">
              {orientationText(sky.kit)} Within the dotted ring the centring has full marks.
              {lights.some((light) => !isInField(light, star))
                ? ` The arrow leads to ${star.name}, as it would be seen in here.`
                : ''}
            </figcaption>
          </figure>
          <div>
            <h4 className="mb-2 font-semibold">The way there</h4>
            <CentringReplay
              starName={star.name}
              steps={steps}
              fieldRadiusArcmin={star.fieldRadiusArcmin}
              taken={takenForIt(star, atConfirm)}
            />
          </div>
        </div>
      </div>
    </Panel>
  );
}

const isInField = (
  { rightArcmin, upArcmin }: FieldOffset,
  { fieldRadiusArcmin }: RunStarResult,
): boolean => Math.hypot(rightArcmin, upArcmin) <= fieldRadiusArcmin;

/** The wrong star beside the one that was meant: as far as the tube was, and then to its place in the field. */
function takenForIt(star: RunStarResult, atConfirm: CentringStep | null): TakenForIt | null {
  const { right, reallyName, offsetOnSky } = star;
  if (right || reallyName === null || offsetOnSky === undefined || atConfirm === null) return null;
  const { rightArcmin, upArcmin } = atConfirm.tubeBesideStar;
  return {
    name: reallyName,
    beside: {
      rightArcmin: rightArcmin + offsetOnSky.rightArcmin,
      upArcmin: upArcmin + offsetOnSky.upArcmin,
    },
  };
}

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
