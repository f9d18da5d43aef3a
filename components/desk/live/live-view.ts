import { labText } from '@/components/grading/template-text';
import { stageWords } from '@/components/lab/dress-rehearsal/stage-words';
import { lessonName } from '@/lib/wording/lesson-name';
import type { LiveBoard, LiveNeed, LivePlace, LiveTile } from '@/lib/data/live-board';
import { routes } from '@/lib/routes';
import { failedGates } from './failed-gates';
import type { LiveBoardView, LiveTileView } from './live-message';

/** The board in words, without its instant, so that two boards alike are equal. */
export const liveView = ({ tiles, leftOut }: LiveBoard): LiveBoardView => ({
  tiles: tiles.map(tileView),
  leftOut,
});

function tileView({ cardNumber, student, state, place, since, need, last, failed }: LiveTile) {
  const gates = failed === null ? [] : failedGates(failed.result);
  const view: LiveTileView = {
    cardNumber,
    label: student?.displayName ?? `Card ${String(cardNumber)}`,
    href: student === null ? null : routes.teacher.student(student.id),
    state,
    where: whereText(place),
    detail: detailText(place),
    sinceAt: since?.toISOString() ?? null,
    need: need === null || need.why === 'gate' ? null : needText(need),
    gates:
      failed === null || gates.length === 0
        ? null
        : {
            text: gates.join('; '),
            href: failed.attemptId === null ? null : routes.teacher.attempt(failed.attemptId),
          },
    last: last === null ? null : { text: lastText[last.what], at: last.at.toISOString() },
  };
  return view;
}

function whereText(place: LivePlace): string | null {
  switch (place.kind) {
    case 'attempt':
    case 'handed-in':
      return labText[place.lab].name;
    case 'practice':
      return `Questions: ${lessonName(place.lesson)}`;
    case 'reading':
      return `Reading: ${lessonName(place.lesson)}`;
    case 'nothing-open':
      return 'Nothing open';
    case 'away':
      return place.signedOut ? 'Signed out' : null;
  }
}

function detailText(place: LivePlace): string | null {
  switch (place.kind) {
    case 'attempt': {
      const { mode, title, lab, part, stage } = place;
      return joined(
        mode === 'practice' ? 'Practice' : title === labText[lab].name ? 'Check' : `“${title}”`,
        part === null ? null : `part ${String(part.number)} of ${String(part.of)}`,
        stage === null ? null : stageText(stage),
      );
    }
    case 'handed-in': {
      const { mode, title, lab, passed } = place;
      return joined(
        mode === 'practice' ? 'Practice' : title === labText[lab].name ? 'Check' : `“${title}”`,
        passed === null ? null : passed ? 'passed' : 'not yet',
      );
    }
    case 'nothing-open':
    case 'practice':
    case 'reading':
    case 'away':
      return null;
  }
}

const joined = (...parts: readonly (string | null)[]): string =>
  parts.filter((part) => part !== null).join(' · ');

const counted = (count: number, one: string, many: string): string =>
  `${String(count)} ${count === 1 ? one : many}`;

function stageText(stage: NonNullable<Extract<LivePlace, { kind: 'attempt' }>['stage']>): string {
  switch (stage.kind) {
    case 'stage':
      return `at “${stageWords[stage.stage].title}”`;
    case 'answered':
      return `${String(stage.count)} answered`;
    case 'picked':
      return counted(stage.count, 'star picked', 'stars picked');
    case 'looked-at':
      return counted(stage.count, 'thing looked at', 'things looked at');
    case 'confirmed':
      return counted(stage.count, 'star confirmed', 'stars confirmed');
    case 'done':
      return counted(stage.count, 'step done', 'steps done');
  }
}

function needText(need: Exclude<LiveNeed, { why: 'gate' }>): NonNullable<LiveTileView['need']> {
  switch (need.why) {
    case 'no-new-step':
      return { text: 'No new step', sinceAt: need.since.toISOString() };
    case 'no-answer':
      return { text: 'No answer', sinceAt: need.since.toISOString() };
    case 'wrong-in-a-row':
      return { text: `${String(need.count)} wrong answers in a row`, sinceAt: null };
    case 'not-yet-again':
      return { text: `Not yet, ${String(need.count)} times in a row`, sinceAt: null };
  }
}

const lastText: Readonly<Record<NonNullable<LiveTile['last']>['what'], string>> = {
  step: 'Last step',
  started: 'Started',
  asked: 'Question asked',
  answered: 'Answered',
  'handed-in': 'Handed in',
  seen: 'Last seen',
};
