import { describe, expect, test } from 'vitest';
import {
  defaultPlace,
  eveningScenario,
  kitOrFirst,
  siteOrSchoolYard,
} from '@/lib/data/default-evening';
import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import { hasMoment, labOptions, labs, type Lab } from '@/lib/variants/labs';

const scenario = eveningScenario({
  place: defaultPlace,
  localTime: '2026-12-05T19:30',
  kit: kitOrFirst('wren'),
  site: siteOrSchoolYard('open-field'),
});

/** Some tasks of a lab within a window of time, as an attempt would freeze them. */
const tasksWithin = (lab: Lab, windowMinutes: number): unknown[] =>
  labOptions[lab].templates.slice(0, 2).flatMap((template) =>
    ['a', 'b'].map((seed) =>
      labTasks[lab].freeze({
        seed: `${seed} of ${template}`,
        scenario,
        templates: [template],
        windowMinutes,
        kitId: 'wren',
        minutesAllowed: null,
        mayPause: true,
      }),
    ),
  );

// The form asks for a window of time only where one of these tells: no outside source, the labs themselves.
describe('the window of time', () => {
  test.each(labs.filter(hasMoment))('changes the tasks of %s', (lab) => {
    expect(tasksWithin(lab, 90)).not.toEqual(tasksWithin(lab, 0));
  });

  test.each(labs.filter((lab) => !hasMoment(lab)))('leaves those of %s as they are', (lab) => {
    expect(tasksWithin(lab, 90)).toEqual(tasksWithin(lab, 0));
  });
});
