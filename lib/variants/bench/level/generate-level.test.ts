import { describe, expect, it } from 'vitest';
import { levelTask, manyLevelTasks } from '@/tests/support/level-tasks';
import { levelVariantSchema } from '../../../data/lab-tasks/bench/stored-level';
import { fewestMoves } from '../../../levelling/fewest-moves';
import { firstSlew, takenAsLevel } from '../../../levelling/tilt-consequences';
import { bubbleOf, legIndices, startOf, tiltOfHead } from '../../../levelling/tripod';
import { act } from '../../../levelling/tripod-actions';
import { settled } from './draw-tripod-site';
import { levelTemplates, type LevelTemplate } from './level-variant';

const many = manyLevelTasks(60);
const ofKind = (template: LevelTemplate) => many.filter((task) => task.template === template);

describe('tasks of "Level"', () => {
  it('are the same for the same seed and differ for others', () => {
    expect(levelTask('soft-foot')).toEqual(levelTask('soft-foot'));
    const texts = many.map((task) => JSON.stringify({ ...task, kitName: '' }));
    expect(new Set(texts).size).toBe(many.length);
  });

  it('are read back from their JSON whole', () => {
    for (const task of many)
      expect(levelVariantSchema.parse(JSON.parse(JSON.stringify(task)))).toEqual(task);
  });

  it('lean by 2° to 4.4° once every foot has gone in, with the bubble inside its glass', () => {
    for (const { site } of many) {
      const { tiltDeg } = tiltOfHead(site, settled(site));
      expect(tiltDeg).toBeGreaterThanOrEqual(2);
      expect(tiltDeg).toBeLessThanOrEqual(4.4);
      expect(bubbleOf(site, startOf(site)).atTheWall).toBe(false);
    }
  });

  it('ask for two moves, or for the one that was reckoned', () => {
    for (const { site, template } of many)
      expect(fewestMoves(site, settled(site))[0]?.legs).toHaveLength(
        template === 'read-then-move' ? 1 : 2,
      );
  });

  it('begin with every leg within its ends, in whole millimetres', () => {
    for (const { site } of many)
      for (const { startMm, groundMm, azimuthDeg } of site.legs) {
        expect(startMm).toBeGreaterThanOrEqual(site.legMinMm);
        expect(startMm).toBeLessThanOrEqual(site.legMaxMm);
        expect([startMm, groundMm].every(Number.isInteger)).toBe(true);
        expect(azimuthDeg).toBeLessThan(360);
      }
  });

  it('have one soft foot where that is the task, and else none', () => {
    for (const { site, template } of many)
      expect(site.legs.filter(({ sinksMm }) => sinksMm > 0)).toHaveLength(
        template === 'soft-foot' ? 1 : 0,
      );
  });

  it('have a leg at its end where that is the task', () => {
    for (const { site } of ofKind('leg-at-its-end'))
      expect(
        legIndices.filter((leg) => [site.legMinMm, site.legMaxMm].includes(site.legs[leg].startMm)),
      ).toHaveLength(1);
  });

  it('have a vial that is out where that is the task, and an arm that shows it', () => {
    for (const { site } of ofKind('untrue-vial')) {
      const { zeroRightMm, zeroUpMm } = site.vial;
      expect(Math.hypot(zeroRightMm, zeroUpMm)).toBeGreaterThan(1.6);
      expect(act(site, startOf(site), { do: 'turn-arm' }).ok).toBe(true);
    }
  });

  it('offer answers of which one is what the mechanics say, and none comes twice', () => {
    for (const { question } of many) {
      const { first, second } = question;
      const truths = [
        [question.firstSlewUpArcmin, firstSlew(question, first).upArcmin],
        [question.takenAsLevelUpArcmin, takenAsLevel(question, first, second).upArcmin],
      ] as const;
      for (const [options, truth] of truths) {
        expect(options).toHaveLength(5);
        const misses = options.map((arcmin) => Math.abs(arcmin - truth)).sort((a, b) => a - b);
        // Rounded to a whole minute; the next one is a quarter of the tilt off, 7′ at least.
        expect(misses[0]).toBeLessThanOrEqual(0.5);
        expect(misses[1]).toBeGreaterThan(6);
      }
      expect(new Set(question.afterTwoStarsArcmin).size).toBe(4);
    }
  });

  it('share no answer: the right one is not always at the same place, nor of the same size', () => {
    for (const template of levelTemplates) {
      const places = ofKind(template).map(({ question }) => {
        const truth = firstSlew(question, question.first).upArcmin;
        const misses = question.firstSlewUpArcmin.map((arcmin) => Math.abs(arcmin - truth));
        return misses.indexOf(Math.min(...misses));
      });
      expect(new Set(places).size).toBeGreaterThanOrEqual(4);
    }
  });
});
