import { routes } from '@/lib/routes';
import { outsideCache } from './outside-cache';

/** A phone on a school's network has the shell in seconds; our judgement. */
const patienceMs = 120_000;

/**
 * Sets up the worker that opens the sign-off page without a connection; browsers allow one on https or
 * localhost only. True only once the shell and every file that it names are on the device.
 */
export async function setUpWorker(classId: string): Promise<boolean> {
  try {
    const scope = routes.teacher.classSignOff(classId);
    const { installing, waiting, active } = await navigator.serviceWorker.register(
      routes.outsideWorker(),
      { scope },
    );
    const fresh = installing ?? waiting;
    if (fresh !== null) return await isInstalled(fresh);
    return active !== null && (await keepsAnew(active));
  } catch {
    return false;
  }
}

/** A worker's installation keeps the shell, and fails with it. */
const isInstalled = (worker: ServiceWorker): Promise<boolean> =>
  new Promise((tell) => {
    const look = () => {
      if (worker.state === 'activated') tell(true);
      if (worker.state === 'redundant') tell(false);
    };
    setTimeout(() => tell(false), patienceMs);
    worker.addEventListener('statechange', look);
    look();
  });

/** One that was there before keeps the shell of today, and answers whether it could. */
const keepsAnew = (worker: ServiceWorker): Promise<boolean> =>
  new Promise((tell) => {
    const { port1, port2 } = new MessageChannel();
    const end = (kept: boolean) => {
      port1.close();
      tell(kept);
    };
    setTimeout(() => end(false), patienceMs);
    port1.onmessage = ({ data }) => end(data === true);
    worker.postMessage('keep-shell', [port2]);
  });

/** Once nothing is kept here the worker has nothing to open, and takes what it kept along. */
export async function removeWorker(): Promise<void> {
  try {
    const all = await navigator.serviceWorker.getRegistrations();
    const isOurs = ({ active, waiting, installing }: ServiceWorkerRegistration) =>
      [active, waiting, installing].some(
        (one) => one !== null && new URL(one.scriptURL).pathname === routes.outsideWorker(),
      );
    await Promise.all(all.filter(isOurs).map((one) => one.unregister()));
    await window.caches.delete(outsideCache);
  } catch {
    // Without https there is none; otherwise it harms nobody and goes with the next sign-out.
  }
}
