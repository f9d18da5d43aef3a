import { beforeAll, describe, expect, test } from 'vitest';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import { createAssignment, previewAnswerKey } from '@/lib/data/assignments';
import { hmacOf } from '@/lib/data/env';
import { rightPairs } from '@/lib/grading/allowed-pairs';
import { gradePair } from '@/lib/grading/grade-pair';
import type { PairSubmission } from '@/lib/grading/pair-submission';
import { storedAnswerKey } from '@/lib/pointing/stored-answer-key';
import { generatePairVariant } from '@/lib/variants/generate-pair-variant';
import { pairTemplates, type PairTemplate } from '@/lib/variants/pair-variant';
import { everyFaultTemplate, everyRunTemplate } from '../support/lab-work';
import { useSchoolDatabase } from '../support/school-database';
import {
  assignmentInput,
  labPart,
  makeSchool,
  monday,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
const catalogue = loadCatalogue();
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

/** The very task that the preview speaks of, made again from its seed. */
function sampleTask(assignmentId: string, template: PairTemplate) {
  const { scenario } = assignmentInput();
  const variant = generatePairVariant({
    seed: hmacOf('preview', assignmentId, template),
    scenario,
    templates: [template],
    windowMinutes: 20,
    catalogue,
  });
  const { frame } = variant;
  const { instant } = frame;
  const answerKey = storedAnswerKey({ scenario: variant.scenario, instant, frame, catalogue });
  return { variant, answerKey };
}

const submissionOf = (stars: readonly [number, number], givenHip: number | null) => {
  const [first, second] = stars[1] === givenHip ? ([stars[1], stars[0]] as const) : stars;
  return {
    kind: 'pair',
    stars: [
      { hip: first, lookAlike: null },
      { hip: second, lookAlike: null },
    ],
  } satisfies PairSubmission;
};

describe('the sample pair of a kind of task', () => {
  // Several assignments, so that the seeds differ: what the mount proposes is seldom the best of the sky.
  const sampled: { template: PairTemplate; shown: boolean }[] = [];

  test.each([1, 2, 3, 4])('is one that the task takes, with full marks (sky %d)', async () => {
    const { assignmentId } = valueOf(
      await createAssignment(
        school.owner,
        school.classId,
        { ...assignmentInput(), parts: [labPart('pick-the-pair', pairTemplates)] },
        monday,
      ),
    );
    const [preview] = (await previewAnswerKey(school.owner, assignmentId)) ?? [];
    if (preview?.lab !== 'pick-the-pair') throw new Error('a preview of another lab');
    expect(preview.variants.map(({ template }) => template)).toEqual([...pairTemplates]);
    for (const { template, sample } of preview.variants) {
      const { variant, answerKey } = sampleTask(assignmentId, template);
      sampled.push({ template, shown: sample !== null });
      if (sample === null) {
        expect(rightPairs(variant, answerKey)).toEqual([]);
        continue;
      }
      const graded = gradePair({
        variant,
        answerKey,
        submission: submissionOf(sample.stars, variant.givenHip),
        catalogue,
      });
      if (!graded.ok) throw new Error(`${template}: refused, ${graded.refusal.code}`);
      const geometry = graded.result.criteria.find(({ id }) => id === 'geometry');
      expect(geometry?.earned).toBe(geometry?.possible);
    }
  });

  test('is there for every kind but the night on which nothing will do', () => {
    for (const template of pairTemplates) {
      const shown = sampled.filter((one) => one.template === template).map((one) => one.shown);
      expect(shown).toHaveLength(4);
      if (template === 'none-usable') expect(shown).not.toContain(true);
      else expect(shown).toContain(true);
    }
  });
});

describe('a preview of the other labs', () => {
  const previewOf = async (task: object) => {
    const input = { ...assignmentInput(), ...task };
    const made = valueOf(await createAssignment(school.owner, school.classId, input, monday));
    return (await previewAnswerKey(school.owner, made.assignmentId))?.[0];
  };

  test('tells what a perfect operator would get in each kind of run', async () => {
    const preview = await previewOf({ parts: [labPart('alignment-run', everyRunTemplate)] });
    if (preview?.lab !== 'alignment-run') throw new Error('a preview of another lab');
    expect(preview.key.pairs.length).toBeGreaterThan(0);
    expect(preview.variants.map(({ template }) => template)).toEqual(everyRunTemplate);
    for (const { sample } of preview.variants) {
      expect(sample?.total).toBeGreaterThan(99);
      expect(sample?.outcome?.kind).toBe('agree');
      expect(sample?.names).toHaveLength(2);
    }
  });

  test('tells the fault behind each kind of evidence, its look-alikes and its cure', async () => {
    const preview = await previewOf({ parts: [labPart('what-went-wrong', everyFaultTemplate)] });
    if (preview?.lab !== 'what-went-wrong') throw new Error('a preview of another lab');
    expect(preview.variants.map(({ template }) => template)).toEqual(everyFaultTemplate);
    for (const { sample } of preview.variants) {
      expect(sample.alike).toContain(sample.fault);
      expect(sample.cures[sample.fault]?.length).toBeGreaterThan(0);
    }
  });
});
