import type { Clock } from './clock';

export type DemoSignIns = {
  teacher: { email: string; password: string };
  student: { displayName: string; classCode: string; cardNumber: number; words: string };
};

/** Makes the demonstration class unless it is there; its sign-ins are fixed, for the start command to print. */
export async function seedDemo(clock?: Clock): Promise<DemoSignIns> {
  throw new Error('not written yet');
}
