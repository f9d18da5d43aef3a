import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standAfter } from '../assembly/stand';
import { assemblySteps, type AssemblyStep } from '../assembly/steps';
import { packedUp, packUpSteps, type PackUpStep } from './pack-up';

const without = (step: PackUpStep): PackUpStep[] => packUpSteps.filter((one) => one !== step);

describe('packing up', () => {
  it('is right in the order of the rules, and in any other that keeps them', () => {
    expect(packedUp(packUpSteps)).toEqual({ broken: [], missing: [], share: 1 });
    // Caps go on a tube that nobody looks through any more, at any time before its eyepiece is out.
    expect(packedUp(['caps-on', ...without('caps-on')]).share).toBe(1);
    const handFirst = ['tube-level', 'switch-off', 'unplug-hand-control'] as const;
    const rest = packUpSteps.filter((step) => handFirst.every((one) => one !== step));
    expect(packedUp([...handFirst, ...rest]).share).toBe(1);
  });

  it('names the rule that was broken, and whether anybody could come to harm', () => {
    const { broken, share } = packedUp([...without('hold-tube'), 'hold-tube']);
    expect(broken).toContainEqual({ before: 'hold-tube', after: 'open-clamp', danger: true });
    expect(share).toBeLessThan(1);
    const { broken: live } = packedUp(['unplug-hand-control', ...without('unplug-hand-control')]);
    expect(live).toEqual([{ before: 'switch-off', after: 'unplug-hand-control', danger: true }]);
  });

  it('holds legs folded under the mount for a danger, and a hand control pulled when the supply is out for none', () => {
    const folded: PackUpStep[] = [...without('fold-legs')];
    folded.splice(folded.indexOf('mount-off'), 0, 'fold-legs');
    expect(packedUp(folded).broken).toContainEqual({
      before: 'mount-off',
      after: 'fold-legs',
      danger: true,
    });
    const last = without('switch-off');
    last.splice(last.indexOf('unplug-hand-control') + 1, 0, 'switch-off');
    expect(packedUp(last).broken.map(({ danger }) => danger)).toEqual([false, false]);
  });

  it('holds whatever lets the tube fall or the stand go over for a danger', () => {
    const orders = fc.shuffledSubarray([...packUpSteps], { minLength: packUpSteps.length });
    const isAssembly = (step: PackUpStep): step is AssemblyStep =>
      assemblySteps.some((one) => one === step);
    fc.assert(
      fc.property(orders, (steps) => {
        const stand = standAfter(steps.filter(isAssembly), 'built');
        if (stand.tipped || stand.tube === 'fallen')
          expect(packedUp(steps).broken.some(({ danger }) => danger)).toBe(true);
      }),
    );
  });

  it('names what was never done, and takes no rule for broken because nothing followed', () => {
    const { missing, broken, share } = packedUp(without('look-over-the-ground'));
    expect(missing).toEqual(['look-over-the-ground']);
    expect(broken).toEqual([]);
    expect(share).toBeLessThan(1);
    expect(packedUp([])).toMatchObject({ share: 0, broken: [] });
  });

  it('holds every order to be either whole or against a rule that it names', () => {
    const orders = fc.shuffledSubarray([...packUpSteps], { minLength: packUpSteps.length });
    fc.assert(
      fc.property(orders, (steps) => {
        const { broken, share } = packedUp(steps);
        for (const { before, after } of broken) {
          expect(steps.indexOf(after)).toBeLessThan(steps.indexOf(before));
        }
        expect(share === 1).toBe(broken.length === 0);
      }),
    );
  });
});
