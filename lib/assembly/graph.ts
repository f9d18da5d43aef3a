import { neededSteps, type AssemblyStep, type AssemblyTask } from './steps';

/** One step must come before another. */
export type AssemblyEdge = { before: AssemblyStep; after: AssemblyStep };

/*
 * Which step rests on which, and no more: any order that keeps to these is right. Common practice, no
 * source; the reasons are told in the lab.
 */
const buildEdges: readonly (readonly [AssemblyStep, AssemblyStep])[] = [
  // The stand first: what is raised or loaded with the legs together falls over.
  ['spread-legs', 'lock-spreader'],
  ['spread-legs', 'set-height'],
  ['set-height', 'lock-legs'],
  ['spread-legs', 'tray-in'],
  // Then its load, once it can bear it.
  ['lock-spreader', 'mount-on'],
  ['lock-legs', 'mount-on'],
  ['tray-in', 'mount-on'],
  ['mount-on', 'bolt-mount'],
  ['bolt-mount', 'tube-on'],
  ['open-clamp', 'tube-on'],
  // The tube is held by hands until clamp and stop screw hold it.
  ['tube-on', 'clamp-tight'],
  ['tube-on', 'stop-screw'],
  ['clamp-tight', 'let-go'],
  ['stop-screw', 'let-go'],
  // Nothing is hung on a tube that somebody has to hold.
  ['let-go', 'finder-on'],
  ['let-go', 'prism-in'],
  ['let-go', 'diagonal-in'],
  ['let-go', 'low-eyepiece-in'],
  ['prism-in', 'low-eyepiece-in'],
  ['diagonal-in', 'low-eyepiece-in'],
  // Open glass last: until then every screw and finger is near it.
  ['finder-on', 'caps-off'],
  ['low-eyepiece-in', 'caps-off'],
];
const takeDownEdges: readonly (readonly [AssemblyStep, AssemblyStep])[] = [
  ['caps-on', 'eyepiece-out'],
  ['eyepiece-out', 'hold-tube'],
  ['hold-tube', 'open-clamp'],
  ['open-clamp', 'tube-off'],
  ['tube-off', 'unbolt-mount'],
  ['unbolt-mount', 'mount-off'],
  ['mount-off', 'tray-out'],
  ['tray-out', 'fold-legs'],
];

/** The edges between steps of the task. */
export function edgesOf(task: AssemblyTask): readonly AssemblyEdge[] {
  const needed = new Set(neededSteps(task));
  return (task.kind === 'take-down' ? takeDownEdges : buildEdges)
    .filter(([before, after]) => needed.has(before) && needed.has(after))
    .map(([before, after]) => ({ before, after }));
}

/** The edges that an order breaks: the later of two steps was done, and the earlier not yet. */
export function brokenEdges(task: AssemblyTask, order: readonly AssemblyStep[]): AssemblyEdge[] {
  const placeOf = new Map(order.map((step, index) => [step, index]));
  return edgesOf(task).filter(({ before, after }) => {
    const later = placeOf.get(after);
    if (later === undefined) return false;
    const earlier = placeOf.get(before);
    return earlier === undefined || earlier > later;
  });
}

/** The steps that can be done now without breaking anything. */
export function readySteps(task: AssemblyTask, done: readonly AssemblyStep[]): AssemblyStep[] {
  return neededSteps(task).filter(
    (step) =>
      !done.includes(step) &&
      edgesOf(task).every(({ before, after }) => after !== step || done.includes(before)),
  );
}
