import type { AssemblyStep } from './steps';

/** What stands on the bench after what was done, for a drawing of it. */
export type Stand = {
  legs: 'folded' | 'spread';
  /** Whether the legs were drawn out. */
  raised: boolean;
  tray: boolean;
  mount: 'away' | 'on' | 'bolted';
  tube: 'away' | 'held' | 'clamped' | 'fallen';
  finder: boolean;
  imagePart: boolean;
  eyepiece: boolean;
  caps: boolean;
  /** It fell over, or would have. */
  tipped: boolean;
};

const packed: Stand = {
  legs: 'folded',
  raised: false,
  tray: false,
  mount: 'away',
  tube: 'away',
  finder: false,
  imagePart: false,
  eyepiece: false,
  caps: true,
  tipped: false,
};
const built: Stand = {
  legs: 'spread',
  raised: true,
  tray: true,
  mount: 'bolted',
  tube: 'clamped',
  finder: true,
  imagePart: true,
  eyepiece: true,
  caps: false,
  tipped: false,
};

/** The stand after these steps, started from the case or from what stood there at the evening's end. */
export function standAfter(order: readonly AssemblyStep[], from: 'packed' | 'built'): Stand {
  const done = new Set<AssemblyStep>();
  let stand = from === 'packed' ? packed : built;
  for (const step of order) {
    stand = after(stand, step, done);
    done.add(step);
  }
  return stand;
}

function after(stand: Stand, step: AssemblyStep, done: ReadonlySet<AssemblyStep>): Stand {
  const onTheMount = stand.tube === 'held' || stand.tube === 'clamped';
  switch (step) {
    case 'spread-legs':
      return { ...stand, legs: 'spread' };
    case 'set-height':
      return { ...stand, raised: true, tipped: stand.tipped || stand.legs === 'folded' };
    case 'tray-in':
      return { ...stand, tray: true };
    case 'mount-on':
      // Legs that nothing keeps apart, or that can slide in on themselves, do so under the load.
      return {
        ...stand,
        mount: 'on',
        tipped: stand.tipped || !stand.tray || !done.has('lock-spreader') || !done.has('lock-legs'),
      };
    case 'bolt-mount':
      return stand.mount === 'on' ? { ...stand, mount: 'bolted' } : stand;
    case 'tube-on':
      return { ...stand, tube: 'held', tipped: stand.tipped || stand.mount !== 'bolted' };
    case 'clamp-tight':
      return stand.tube === 'held' ? { ...stand, tube: 'clamped' } : stand;
    case 'let-go':
      return stand.tube === 'held' ? { ...stand, tube: 'fallen' } : stand;
    case 'finder-on':
      return { ...stand, finder: true };
    case 'prism-in':
    case 'diagonal-in':
      return { ...stand, imagePart: true };
    case 'low-eyepiece-in':
    case 'high-eyepiece-in':
      return { ...stand, eyepiece: true };
    case 'caps-off':
      return { ...stand, caps: false };
    case 'caps-on':
      return { ...stand, caps: true };
    case 'eyepiece-out':
      return { ...stand, eyepiece: false };
    case 'open-clamp':
      return onTheMount && !done.has('hold-tube') ? { ...stand, tube: 'fallen' } : stand;
    case 'tube-off':
      return { ...stand, tube: stand.tube === 'fallen' ? 'fallen' : 'away' };
    case 'unbolt-mount':
      return stand.mount === 'bolted'
        ? { ...stand, mount: 'on', tipped: stand.tipped || stand.tube === 'clamped' }
        : stand;
    case 'mount-off':
      return { ...stand, mount: 'away' };
    case 'tray-out':
      return { ...stand, tray: false, tipped: stand.tipped || stand.mount !== 'away' };
    case 'fold-legs':
      return { ...stand, legs: 'folded', tipped: stand.tipped || stand.mount !== 'away' };
    default:
      return stand;
  }
}
