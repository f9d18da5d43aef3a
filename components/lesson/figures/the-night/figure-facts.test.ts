import { describe, expect, it } from 'vitest';
import { packUpSteps } from '@/lib/rehearsal/pack-up';
import { duskAndDawn } from '@/lib/sky/twilight';
import { dewFacts, dewWords, startingDew } from './dew-facts';
import { duskFacts, duskWords } from './dusk-facts';
import { eyesWords } from './eyes-facts';
import { isOver, packingAtStart, packWords, takeStep } from './pack-facts';
import { sunDown } from './sun-down';

const dayOf = (localDate: string): number =>
  (Date.parse(`${localDate}T00:00:00Z`) - Date.parse('2026-01-01T00:00:00Z')) / 86_400_000 + 1;

describe('from sunset to dark', () => {
  it('on the equator at an equinox takes 68.7 minutes: 17.167° straight down at 15° an hour', () => {
    const { sunset, astronomical } = sunDown(0, dayOf('2026-03-20'));
    expect(60 * ((astronomical ?? 0) - (sunset ?? 0))).toBeCloseTo(68.67, 1);
  });

  it.each([
    [52, '2026-12-05'],
    [0, '2026-03-20'],
    [-35, '2026-07-10'],
    [45, '2026-10-10'],
  ])(
    'at %d° on %s takes as long as the ephemeris says, to three minutes',
    (latitudeDeg, localDate) => {
      const { sunset, astronomicalDusk } = duskAndDawn({
        place: { latitudeDeg, longitudeDeg: 0, elevationM: 0 },
        localDate,
        timeZone: 'UTC',
      });
      const minutes = (Date.parse(astronomicalDusk ?? '') - Date.parse(sunset ?? '')) / 60_000;
      const facts = duskFacts({ latitudeDeg, dayOfYear: dayOf(localDate) });
      const ours = 60 * ((facts.astronomical ?? 0) - (facts.sunset ?? 0));
      expect(Math.abs(ours - minutes)).toBeLessThan(3);
    },
  );

  it('says that it does not get dark at 52° in June, nor the Sun set at 70°', () => {
    const june = { latitudeDeg: 52, dayOfYear: dayOf('2026-06-21') };
    expect(duskWords(june, duskFacts(june))).toContain('all night');
    const north = { latitudeDeg: 70, dayOfYear: dayOf('2026-06-21') };
    expect(duskWords(north, duskFacts(north))).toContain('does not set');
    const winter = { latitudeDeg: 70, dayOfYear: dayOf('2026-12-21') };
    expect(duskWords(winter, duskFacts(winter))).toContain('does not rise');
  });
});

describe('eyes in the dark', () => {
  it('count from the torch, once it has shone', () => {
    const need = (words: string) => /about (\d+) times/.exec(words)?.[1];
    const alone = need(eyesWords({ minute: 5, flash: null }));
    expect(need(eyesWords({ minute: 25, flash: 20 }))).toBe(alone);
    expect(need(eyesWords({ minute: 15, flash: 20 }))).toBe(
      need(eyesWords({ minute: 15, flash: null })),
    );
    expect(alone).toBe('1500');
    expect(eyesWords({ minute: 40, flash: null })).toContain('at their best');
  });
});

describe('dew on glass', () => {
  it('at 8 °C and 80 % comes between two and four degrees below the air', () => {
    // Dew point tables give 4.8 °C (from memory).
    expect(dewFacts(startingDew).dewC).toBeCloseTo(4.8, 1);
    expect(dewFacts({ ...startingDew, glassBelowAirC: 2 }).dewy).toBe(false);
    expect(dewFacts({ ...startingDew, glassBelowAirC: 4 }).dewy).toBe(true);
    expect(dewWords(startingDew, dewFacts(startingDew))).toContain('stays dry');
  });
});

describe('packing up', () => {
  it('in the order of the rules ends well', () => {
    expect(isOver(packUpSteps)).toBe(false);
    const packing = packUpSteps.reduce(takeStep, packingAtStart);
    expect(packing.done).toEqual(packUpSteps);
    expect(packWords(packing)).toContain('nothing lies in the grass');
  });

  it('ends when the clamp is opened with nobody at the tube, and says why', () => {
    const packing = takeStep({ done: ['tube-level', 'switch-off'], refused: null }, 'open-clamp');
    expect(isOver(packing.done)).toBe(true);
    expect(packWords(packing)).toContain('slides out and falls');
  });

  it('refuses what comes too early and brings nothing down, such as the hand control pulled live', () => {
    const packing = takeStep(packingAtStart, 'unplug-hand-control');
    expect(packing.done).toEqual([]);
    expect(packWords(packing)).toContain('may burn its electronics');
  });
});
