import type { SkyLight } from '../../../alignment/lights';
import type { ConfirmedMoment } from '../../../alignment/run';
import type { RunInput } from '../../../alignment/run-input';
import type { RunLog } from '../../../alignment/run-log';
import { fieldRadiusArcmin } from '../../../pointing/field-radius';
import { mergedStarOf } from '../../../pointing/merged-stars';
import type { OwnTelescope } from '../../../rehearsal/evening-setup';
import type { Slips } from '../../../rehearsal/slips';
import { tracedGoTos } from '../../../rehearsal/trace-run';
import { nakedEyePlanets } from '../../../sky/sky-frame';
import { reallyInField } from '../../really-in-field';
import type { RehearsalMiss } from './dress-rehearsal-result';

/** Every star that was looked for on a rehearsed evening, and what moved it out of the middle. */
export function rehearsalMisses(
  input: RunInput,
  log: RunLog,
  { slips, telescope }: { slips: Slips; telescope: OwnTelescope },
): RehearsalMiss[] {
  const { scenario, kit, catalogue } = input;
  const wide = fieldRadiusArcmin(scenario.telescope, kit.centringEyepiece);
  const narrow = fieldRadiusArcmin(scenario.telescope, scenario.eyepiece);
  const nameOf = (hip: number): string => mergedStarOf(catalogue, hip)?.name ?? `HIP ${hip}`;
  const lightOf = (moment: ConfirmedMoment): SkyLight | null => lightIn(input, moment);
  const goTos = tracedGoTos(input, log, { slips, telescope, lightOf }).map(
    ({ kind, hip, attribution }): RehearsalMiss => ({
      kind,
      name: nameOf(hip),
      fieldRadiusArcmin: kind === 'third' ? narrow : wide,
      attribution,
    }),
  );
  const [first, ...rest] = goTos;
  return first === undefined ? [] : [first, firstView(slips, first.name, wide), ...rest];
}

/** A star that stands under the dot stands beside the middle of the eyepiece by what the dot is off. */
function firstView({ dot }: Slips, name: string, fieldRadius: number): RehearsalMiss {
  const missArcmin = Math.hypot(dot.rightArcmin, dot.upArcmin);
  // The tube's way from the star, as with every miss.
  const miss = { rightArcmin: -dot.rightArcmin, upArcmin: -dot.upArcmin };
  return {
    kind: 'first-view',
    name,
    fieldRadiusArcmin: fieldRadius,
    attribution: {
      ok: true,
      miss,
      missArcmin,
      togetherArcmin: 0,
      shares: missArcmin === 0 ? [] : [{ cause: 'finder', moved: miss, arcmin: missArcmin }],
    },
  };
}

function lightIn(input: RunInput, moment: ConfirmedMoment): SkyLight | null {
  const { really } = reallyInField(input, moment);
  if (really === null) return null;
  const planet = nakedEyePlanets.find((body) => body === really.id);
  return planet === undefined ? { hip: Number(really.id.slice('hip-'.length)) } : { planet };
}
