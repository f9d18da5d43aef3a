import { tubeAt, viewAt } from '@/lib/alignment/alignment-run';
import type { RunAction, RunLog } from '@/lib/alignment/run-log';
import type { RunView } from '@/lib/alignment/run-state';
import { makePose, type TubePose } from '@/lib/alignment/tube-pose';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { Listeners } from './listeners';
import { RunClock, lastMomentMs, type Waiting } from './run-clock';
import { RunHand } from './run-hand';
import type { RunLabVariant } from './run-lab-variant';
import { RunRecord } from './run-record';
import { sameSnapshot, snapshotOf, type RunSnapshot } from './run-snapshot';
import { RunSkyLists } from './run-sky-lists';
import { arrivedInWords, judgeable, notTakenInWords, standsStillInWords } from './run-words';

export type RunModelOptions = {
  variant: RunLabVariant;
  catalogue: StarCatalogue;
  mode: 'practice' | 'check';
  /** Of an earlier visit; empty for a new run. */
  log: RunLog;
  onLog: (log: RunLog) => void;
};

/*
 * Longer than a file should be: one small function for each thing that the lab's parts read or do,
 * over the same few fields. What has a life of its own is elsewhere: clock, hand, record, lists.
 */

/**
 * The run as the lab's parts see it. It lives outside React, as the sky's view does: drawings read
 * `pose` in every frame, panels read `snapshot()` through `useRunSnapshot`, which changes only when
 * what they show does.
 *
 * Every function that does something returns whether it was done; if not, `snapshot().said` tells
 * why. With `holdSky(true)` time is never pressing: the sky stands still, a slew or a step is over at
 * once (and has taken its own time), and only the rockers have no use.
 */
export class RunModel {
  readonly variant: RunLabVariant;
  readonly catalogue: StarCatalogue;
  readonly mode: 'practice' | 'check';
  /** What is in the sky, the finder and the eyepiece, at this moment. */
  readonly lists: RunSkyLists;
  /** Where tube and dot point now; written into, never replaced. For drawings. */
  readonly pose: TubePose = makePose();

  private readonly clock: RunClock;
  private readonly onLog: (log: RunLog) => void;
  private readonly record: RunRecord;
  private said = '';
  private lessMotion = false;
  private readonly hand = new RunHand();
  private shown: RunSnapshot;
  private readonly news = new Listeners();
  private readonly frames = new Listeners();

  constructor({ variant, catalogue, mode, log, onLog }: RunModelOptions) {
    this.variant = variant;
    this.catalogue = catalogue;
    this.mode = mode;
    this.onLog = onLog;
    this.record = new RunRecord({ ...variant, catalogue }, log);
    this.clock = new RunClock(this.record.run.lastMs);
    this.lists = new RunSkyLists(this);
    tubeAt(this.record.run, this.atMs, this.pose);
    this.shown = snapshotOf(this.view(), this.extras());
  }

  // --- Reading -----------------------------------------------------------------------------------

  /** The sky's own time since the run began, milliseconds. */
  get atMs(): number {
    return this.clock.atMs;
  }

  /** Everything the simulator shows at this moment; made anew at each call. */
  view(): RunView {
    return viewAt(this.record.run, this.atMs);
  }

  /** The knob as it is turned, also where the log does not have it yet. */
  get focus(): number {
    return this.hand.focus?.position ?? this.record.run.focus;
  }

  /** What has been done so far: the draft, and in the end the submission. */
  get done(): RunLog {
    return this.record.log;
  }

  /** Each confirmed star with the direction in which the tube pointed then, and when. */
  confirms(): readonly { hip: number; atMs: number; view: RunView }[] {
    return this.record.run.confirms;
  }

  readonly snapshot = (): RunSnapshot => this.shown;

  readonly subscribe = this.news.add;

  /** Called after each step of the sky's time and after each action. */
  readonly onFrame = this.frames.add;

  // --- Time --------------------------------------------------------------------------------------

  /** The wall's time now: called in every frame while the page shows. */
  tick(nowMs: number): void {
    if (!this.clock.tick(nowMs)) return;
    this.flush(false);
    this.look();
  }

  /** The sky waits for a decision, in the table or at the end; what is under way is over at once. */
  holdSky(held: boolean, where: Waiting = 'table'): void {
    this.releaseRockers();
    if (!this.clock.wait(held, where)) return;
    if (held) this.arrive();
    this.look();
  }

  /** Slews that are under way are over at once. */
  preferLessMotion(wanted: boolean): void {
    this.lessMotion = wanted;
    if (wanted) this.arrive();
  }

  get mayPause(): boolean {
    return this.mode === 'practice' || this.variant.mayPause;
  }

  /** `wallMs` in milliseconds from any fixed moment: how long the sky stood still goes into the log. */
  pause(paused: boolean, wallMs: number): boolean {
    if (!this.mayPause || this.clock.paused === paused) return false;
    this.releaseRockers();
    if (paused) {
      this.clock.pause(wallMs);
      this.tell('The sky stands still.');
      return true;
    }
    const waitedMs = this.clock.goOn(wallMs);
    // A practice that does not allow it in the log needs no account of it either.
    if (this.variant.mayPause) this.take({ at: this.atMs, do: 'paused', waitedMs });
    this.tell('The sky moves on.');
    return true;
  }

  // --- Acting ------------------------------------------------------------------------------------

  /** With the clutches loose: true azimuth the tube faces, and how far it is up, degrees. */
  setStart(azimuthDeg: number, altitudeDeg: number): boolean {
    return this.take(
      { at: this.atMs, do: 'set-start', azimuthDeg, altitudeDeg },
      'The clutches are locked. From now on only the motors move the tube.',
    );
  }

  goTo(hip: number): boolean {
    return this.drive(
      { at: this.atMs, do: 'go-to', hip },
      `The mount drives to where it believes ${this.nameOf(hip)} is.`,
    );
  }

  /** Steps of speed, −5 to 5: to the right along the horizon, and upward. They act from the next frame. */
  setRockers(azimuth: number, altitude: number): void {
    const before = this.hand.rockers;
    if (before.azimuth === azimuth && before.altitude === altitude) return;
    if (!this.clock.running) {
      if (azimuth !== 0 || altitude !== 0) this.tell(this.standsStillText());
      return;
    }
    this.hand.rockers = { azimuth, altitude };
    // Letting go must not wait for the next frame.
    if (azimuth === 0 && altitude === 0) this.flush(false);
    this.tell(this.said);
  }

  /** Moves each axis by so much and stops: to the right, and upward. */
  step(azimuthArcmin: number, altitudeArcmin: number): boolean {
    return this.drive({ at: this.atMs, do: 'step', azimuthArcmin, altitudeArcmin }, 'Moving.');
  }

  stop(): boolean {
    this.hand.off();
    return this.take({ at: this.atMs, do: 'stop' }, 'Stopped.');
  }

  /** Turns of the focuser's knob from where the view is sharp, −10 to 10. */
  setFocus(position: number): void {
    this.hand.turnFocus(position, this.atMs);
    if (!this.clock.running) this.flush(true);
    this.tell(this.said);
  }

  /** "This is the star." */
  confirm(): boolean {
    this.releaseRockers();
    this.flush(true);
    const { readings, targetHip } = this.view();
    if (!this.take({ at: this.atMs, do: 'this-is-the-star', readings })) return false;
    const name = targetHip === null ? 'the star' : this.nameOf(targetHip);
    const forgotten = this.record.run.confirms.length === 0;
    this.tell(
      forgotten
        ? 'The lamp went dark for a moment, and the mount has forgotten both stars. Start again with the first.'
        : `Confirmed as ${name}.`,
    );
    return true;
  }

  anotherStar(): boolean {
    this.releaseRockers();
    return this.take({ at: this.atMs, do: 'another-star' }, 'Turned down.');
  }

  /** Both stars are given up; the time that has passed stays. */
  startAgain(): boolean {
    this.releaseRockers();
    return this.take(
      { at: this.atMs, do: 'start-again' },
      'Both stars are given up. Begin with the first again.',
    );
  }

  /** Ends the run. */
  judge(trust: boolean): boolean {
    this.releaseRockers();
    this.flush(true);
    return this.take(
      { at: this.atMs, do: 'judge', trust },
      trust ? 'You would trust this alignment.' : 'You would not trust this alignment.',
    );
  }

  /**
   * From the very start, where a run has used up its time or its moves before there was anything to
   * judge: it could not be handed in otherwise.
   */
  beginAnew(): boolean {
    const { over, full, stage } = this.shown;
    if ((!over && !full) || judgeable(stage)) return false;
    this.hand.off();
    this.hand.focus = null;
    this.record.forget();
    this.clock.restart();
    this.said = 'The run begins again from the start.';
    this.look();
    this.onLog(this.record.log);
    return true;
  }

  nameOf(hip: number): string {
    return this.lists.nameOf(hip);
  }

  /** Says something in the status line without doing anything. */
  tell(text: string): void {
    this.said = text;
    this.look();
  }

  // --- Within ------------------------------------------------------------------------------------

  private standsStillText(): string {
    const { held, paused } = this.clock;
    return standsStillInWords({ held, paused, stage: this.view().stage });
  }

  private drive(action: RunAction, text: string): boolean {
    if (this.clock.paused || this.atMs >= lastMomentMs) {
      this.tell(this.standsStillText());
      return false;
    }
    this.releaseRockers();
    if (!this.take(action, text)) return false;
    if (this.clock.held || this.lessMotion) this.arrive();
    return true;
  }

  /** To the end of what is under way. */
  private arrive(): void {
    const { arrivesAtMs } = this.view();
    if (arrivesAtMs === null) return;
    this.clock.jumpTo(arrivesAtMs);
    this.look();
  }

  private releaseRockers(): void {
    this.hand.rockers = { azimuth: 0, altitude: 0 };
    this.flush(false);
  }

  /** Brings into the log what was only wanted so far. */
  private flush(focusNow: boolean): void {
    for (const action of this.hand.due(this.atMs, focusNow)) {
      if (!this.take(action)) this.hand.off();
    }
  }

  /** Does one thing, or says why not. What is refused is not in the log. */
  private take(action: RunAction, text?: string): boolean {
    const refusal = this.record.take(action);
    if (refusal !== null) {
      this.tell(notTakenInWords(refusal, this.view().stage, (hip) => this.nameOf(hip)));
      return false;
    }
    if (text !== undefined) this.said = text;
    this.look();
    this.onLog(this.record.log);
    return true;
  }

  private extras() {
    return {
      said: this.said,
      paused: this.clock.paused,
      held: this.clock.held,
      over: this.atMs >= lastMomentMs,
      full: this.record.full,
      focus: this.focus,
      rockers: this.hand.rockers,
      trusted: this.record.trusted,
      sunDeg: this.lists.sunDistanceDeg(),
    };
  }

  /** After anything that may have changed: drawings first, then panels if there is news for them. */
  private look(): void {
    tubeAt(this.record.run, this.atMs, this.pose);
    const view = this.view();
    if (this.shown.moving && !view.moving && view.stage === this.shown.stage) {
      this.said = arrivedInWords(view, (hip) => this.nameOf(hip));
    }
    const next = snapshotOf(view, this.extras());
    this.frames.tell();
    if (sameSnapshot(this.shown, next)) return;
    this.shown = next;
    this.news.tell();
  }
}
