import type { LevelTemplate } from '@/lib/variants/bench/level/level-variant';
import type { BenchText } from '../bench/bench-text';

export const levelText: BenchText<LevelTemplate> = {
  name: 'Level',
  task: 'Level the tripod',
  hint: 'Let legs in and out until the bubble stands in its ring.',
  whatItIs:
    'A tripod stands on uneven ground. You open a leg’s lock, slide the leg, lock it, and watch the bubble run to the high side. Then you work out how level is level enough. About 8 minutes.',
  lead: 'Every round has other ground, another bubble and other stars. Pick the telescope that goes on top.',
  outcomeTitle: 'How level it was left, and what that costs',
  keyLead:
    'Ground, legs and vial differ from student to student. Any legs that bring the bubble to rest count, as long as the head is level in the end; which to move first follows from where the bubble stands.',
  templates: {
    'one-slope': {
      name: 'Ground that falls one way',
      hint: 'Firm ground: work in the bubble’s own direction.',
    },
    'soft-foot': {
      name: 'One foot on soft ground',
      hint: 'It sinks as soon as weight comes on it. Level stays level only if that is foreseen.',
    },
    'leg-at-its-end': {
      name: 'A leg at its end',
      hint: 'The leg that the bubble asks for can go no further: the others must do the work.',
    },
    'turned-vial': {
      name: 'A vial to be read with the head turned',
      hint: 'The vial sits crosswise on the arm: its directions are not the tripod’s.',
    },
    'untrue-vial': {
      name: 'A vial out of adjustment',
      hint: 'Half of what the bubble does in a half-turn of the arm is the vial’s own.',
    },
    'read-then-move': {
      name: 'Read, reckon, move once',
      hint: 'The vial is out of sight while a leg is open: name the leg and the millimetres first.',
    },
  },
};
