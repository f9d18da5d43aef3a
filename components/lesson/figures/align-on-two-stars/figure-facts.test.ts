import { describe, expect, it } from 'vitest';
import {
  centringFacts,
  centringStart,
  playArcmin,
  pressed,
  type CentringState,
} from './centring-facts';
import { confirmedWords, centringWords } from './centring-words';
import { spoiltFacts, startingThird, type SpoilId } from './spoilt-facts';
import { behindIt, saidByMount } from './spoilt-words';

const wren = { orientation: 'true', fieldRadiusArcmin: 75 } as const;
const press = (
  state: CentringState,
  ...moves: readonly (readonly [Parameters<typeof pressed>[1], number])[]
) => moves.reduce((before, [way, by]) => pressed(before, way, by), state);

describe('the figure of centring', () => {
  it('brings the star to the middle with 44′ right and 20′ up, and the readings are the star’s', () => {
    const facts = centringFacts(press(centringStart, ['right', 44], ['up', 20]), wren);
    expect(facts.offArcmin).toBe(0);
    expect(facts.readingOffArcmin).toBe(0);
    expect(confirmedWords(facts, 7.5)).toContain('well done');
  });

  it('leaves the whole play in the reading when the star is reached from the other side', () => {
    // 20′ too far, and then back until the star is in the middle: through the play first.
    const state = press(centringStart, ['right', 64], ['left', 20 + playArcmin], ['up', 20]);
    const facts = centringFacts(state, wren);
    expect(facts.offArcmin).toBe(0);
    expect(facts.lagAcrossArcmin).toBe(playArcmin);
    expect(facts.readingOffArcmin).toBe(playArcmin);
    expect(confirmedWords(facts, 7.5)).toContain('play is still in them');
    expect(centringWords(facts)).toContain('8′ along the horizon');
  });

  it('does not move the star during the first 8′ of a move back', () => {
    const before = centringFacts(centringStart, wren);
    const after = centringFacts(press(centringStart, ['left', playArcmin]), wren);
    expect(after.seen).toEqual(before.seen);
  });

  it('shows the star high and right as it is, turned and mirrored', () => {
    const seen = (orientation: 'true' | 'turned' | 'mirrored') =>
      centringFacts(centringStart, { orientation, fieldRadiusArcmin: 75 }).seen;
    expect(seen('true')).toEqual({ rightArcmin: 44, upArcmin: 20 });
    expect(seen('turned')).toEqual({ rightArcmin: -44, upArcmin: -20 });
    expect(seen('mirrored')).toEqual({ rightArcmin: -44, upArcmin: 20 });
  });
});

describe('the figure of agreement', () => {
  const facts = (spoil: SpoilId, computer: 'solved-zero' | 'fixed-zero' = 'solved-zero') =>
    spoiltFacts({ computer, fieldRadiusArcmin: 27 }, spoil, startingThird);

  it('hits nearly all with both stars centred', () => {
    expect(facts('middle').hits).toBeGreaterThan(97);
    expect(facts('middle').thirdMissArcmin).toBeLessThan(10);
  });

  it('lets a computer that solves for the zero agree on a wrong star, and a third star tell', () => {
    const wrong = facts('wrong');
    expect(saidByMount(wrong.outcome)).toContain('agree to 1′ or better');
    expect(wrong.thirdMissArcmin).toBeGreaterThan(180);
    expect(behindIt(wrong, 27)).toContain('outside the eyepiece');
  });

  it('makes a computer with a fixed zero disagree by the difference of the angles', () => {
    // 1: 110°/40°, 2: 220°/45°, wrong: 224.6°/42.8°; angles by the law of cosines
    const radians = (deg: number) => (deg * Math.PI) / 180;
    const angle = (az: number, alt: number) =>
      (Math.acos(
        Math.sin(radians(40)) * Math.sin(radians(alt)) +
          Math.cos(radians(40)) * Math.cos(radians(alt)) * Math.cos(radians(az - 110)),
      ) *
        180) /
      Math.PI;
    const due = angle(224.6, 42.8) - angle(220, 45);
    const { outcome } = facts('wrong', 'fixed-zero');
    expect(outcome.kind).toBe('disagree');
    // The tube's own zero, 6′, counts about one and a half times here; cone and skew add a little.
    const said = outcome.kind === 'disagree' ? Math.abs(outcome.mismatchArcmin) / 60 : NaN;
    expect(Math.abs(said - due)).toBeLessThan(0.3);
  });

  it('notices two stars taken for each other, whatever the computer', () => {
    for (const computer of ['solved-zero', 'fixed-zero'] as const)
      expect(saidByMount(facts('swapped', computer).outcome)).toContain('swapped');
  });

  it('costs the more targets the farther off the second star was confirmed', () => {
    const hits = (['middle', 'edge', 'dot', 'wrong'] as const).map(
      (spoil) => facts(spoil).hits ?? 0,
    );
    expect([...hits].sort((a, b) => b - a)).toEqual(hits);
  });
});
