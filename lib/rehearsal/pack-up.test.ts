import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packedUp, packedUpRightly, packUpRules, packUpSteps } from './pack-up';

describe('packing up', () => {
  it('is right in the order of the rules, and in any other that keeps them', () => {
    expect(packedUp(packedUpRightly)).toEqual({ broken: [], missing: [], share: 1 });
    const capsFirst = [
      'put-the-caps-on' as const,
      ...packedUpRightly.filter((step) => step !== 'put-the-caps-on'),
    ];
    expect(packedUp(capsFirst).share).toBe(1);
  });

  it('names the rule that was broken', () => {
    const steps = packUpSteps.filter((step) => step !== 'lift-the-tube-off');
    const { broken } = packedUp([...steps, 'lift-the-tube-off']);
    expect(broken.map(({ then, danger }) => [then, danger])).toContainEqual([
      'take-the-mount-off',
      true,
    ]);
  });

  it('names what was never done, and takes no rule for broken for it', () => {
    const { missing, broken, share } = packedUp(
      packedUpRightly.filter((step) => step !== 'look-over-the-ground'),
    );
    expect(missing).toEqual(['look-over-the-ground']);
    expect(broken).toEqual([]);
    expect(share).toBeLessThan(1);
    expect(packedUp([])).toMatchObject({ share: 0, broken: [] });
  });

  it('every order is either kept whole or breaks a rule that it names', () => {
    const orders = fc.shuffledSubarray([...packUpSteps], { minLength: packUpSteps.length });
    fc.assert(
      fc.property(orders, (steps) => {
        const { broken, share } = packedUp(steps);
        for (const { first, then } of broken) {
          expect(steps.indexOf(then)).toBeLessThan(steps.indexOf(first));
        }
        expect(share === 1).toBe(broken.length === 0);
      }),
    );
    expect(packUpRules.some(({ danger }) => danger)).toBe(true);
  });
});
