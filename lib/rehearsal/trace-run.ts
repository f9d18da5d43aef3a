import { act, startRun } from '../alignment/alignment-run';
import { lightSeenAt, type SkyLight } from '../alignment/lights';
import type { ConfirmedMoment, Run } from '../alignment/run';
import type { RunInput } from '../alignment/run-input';
import type { RunLog } from '../alignment/run-log';
import { trueSky } from '../alignment/run-sky';
import { landingBeside } from '../faults/where-it-lands';
import type { FieldOffset } from '../optics/image-orientation';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { attributionOf, type Attribution } from './attribution';
import type { OwnTelescope } from './evening-setup';
import type { GoTo, HandAtStar, RehearsedEvening } from './rehearsed-evening';
import type { Slips } from './slips';

export type GoToKind = 'first-slew' | 'second-slew' | 'third';

/** A go-to of a run, and where its miss came from. */
export type TracedGoTo = { kind: GoToKind; hip: number; attribution: Attribution };

/** What stood in the eyepiece at a confirm; null for an empty field. */
export type LightOf = (moment: ConfirmedMoment) => SkyLight | null;

type Sent = { kind: GoToKind; goTo: GoTo; evening: RehearsedEvening };
type Confirms = readonly { moment: ConfirmedMoment; hand: HandAtStar }[];

/**
 * The go-tos of a rehearsed run that came to rest where the mount took them, each traced to its causes:
 * to each star of the alignment that stands in the end, and to each third star after it. Of one star
 * gone to again the last counts. `slips` are all but the start position, which the log holds. The log
 * must be one that `replayRun` takes.
 */
export function tracedGoTos(
  input: RunInput,
  log: RunLog,
  { slips, telescope, lightOf }: { slips: Slips; telescope: OwnTelescope; lightOf: LightOf },
): readonly TracedGoTo[] {
  const evening: RehearsedEvening = {
    frame: input.frame,
    catalogue: input.catalogue,
    latitudeDeg: input.scenario.place.latitudeDeg,
    computer: input.scenario.telescope.computer,
    telescope,
    slips,
    startedAfterConfirms: 0,
    hands: [],
  };
  let run = startRun(input);
  let confirms: Confirms = [];
  let started: Pick<RehearsedEvening, 'slips' | 'startedAfterConfirms'> = evening;
  let sent: readonly Sent[] = [];
  for (const [index, action] of log.entries()) {
    const before = run;
    run = act(run, action);
    if (action.do === 'set-start') {
      const { azimuthDeg, altitudeDeg } = action;
      started = {
        slips: { ...slips, start: { azimuthDeg, altitudeDeg } },
        startedAfterConfirms: before.confirmsMade,
      };
    }
    // Given up by the learner, or by a computer that has forgotten: what led to it is past as well.
    if (run.confirms.length < before.confirms.length || action.do === 'set-start') sent = [];
    confirms = run.confirms.map(
      (moment) =>
        confirms.find((one) => one.moment === moment) ?? {
          moment,
          hand: handAt(input, slips, moment, lightOf(moment), before.confirmsMade),
        },
    );
    if (action.do === 'go-to' && arrives(run, log[index + 1]?.at)) {
      const hands = confirms.map(({ hand }) => hand);
      const { kind, goTo } = sentTo(run, action.hip);
      sent = [
        ...sent.filter(
          (one) => one.kind !== kind || (kind === 'third' && one.goTo.hip !== goTo.hip),
        ),
        { kind, goTo, evening: { ...evening, ...started, hands } },
      ];
    }
  }
  return sent.map(({ kind, goTo, evening: then }) => ({
    kind,
    hip: goTo.hip,
    attribution: attributionOf(then, goTo),
  }));
}

/** Whether nothing was done before it had arrived. */
const arrives = ({ arrivesAtMs }: Run, nextMs: number | undefined): boolean =>
  arrivesAtMs !== null && (nextMs === undefined || nextMs >= arrivesAtMs);

function sentTo(run: Run, hip: number): Pick<Sent, 'kind' | 'goTo'> {
  const { stage } = run.progress;
  return {
    kind:
      stage === 'centre-first' ? 'first-slew' : stage === 'centre-second' ? 'second-slew' : 'third',
    goTo: { hip, atMs: run.arrivesAtMs ?? run.lastMs, confirmsBefore: run.confirmsMade },
  };
}

/** A star stands under the dot rather than in the field when it is this much nearer to it than the middle is. */
const underTheDotShare = 0.5;

/** What a confirm tells of the hand; an empty field tells of the star that was meant. */
function handAt(
  input: RunInput,
  { dot }: Slips,
  moment: ConfirmedMoment,
  light: SkyLight | null,
  confirmsBefore: number,
): HandAtStar {
  const { hip, atMs, playArcmin } = moment;
  const meant = { hip };
  const star = lightSeenAt(trueSky(input), light ?? meant, atMs);
  if (star === null) throw new Error('what stood in the eyepiece is in no sky');
  const tube = landingBeside({ hip, name: '' }, star, moment.view.tube);
  const beside = { rightArcmin: -60 * tube.rightDeg, upArcmin: -60 * tube.upDeg };
  const underDot = {
    rightArcmin: beside.rightArcmin - dot.rightArcmin,
    upArcmin: beside.upArcmin - dot.upArcmin,
  };
  const { telescope } = input.scenario;
  const outside = sizeOf(beside) > fieldRadiusArcmin(telescope, input.kit.centringEyepiece);
  const byDot = outside && sizeOf(underDot) < underTheDotShare * sizeOf(dot);
  return {
    hip,
    light: light ?? meant,
    by: byDot ? 'dot' : 'eyepiece',
    left: byDot ? underDot : beside,
    lagArcmin: playArcmin,
    atMs,
    confirmsBefore,
  };
}

const sizeOf = ({ rightArcmin, upArcmin }: FieldOffset): number =>
  Math.hypot(rightArcmin, upArcmin);
