import { TableFrame } from '@/components/ui/table-frame';
import { nightOf } from '@/lib/variants/bench/power/power-variant';
import type { PowerViewProps } from './power-play';
import { voltsText } from './power-words';

/** What the drawing of the night shows, in figures: the plan beside what was worked out so far. */
export function NightFigures({ variant, draft }: PowerViewProps) {
  const night = nightOf(variant);
  if (night === null) return null;
  const { hours, needs } = night;
  const rows = [
    ['Hours', String(hours), draft.runTimeHours === null ? '–' : String(draft.runTimeHours)],
    [
      'Volts while slewing',
      `at least ${voltsText(needs.resetBelowV)}`,
      draft.slewingVolts === null ? '–' : voltsText(draft.slewingVolts),
    ],
  ];
  return (
    <TableFrame caption="Tonight: what is needed, and what you have worked out">
      <thead>
        <tr>
          <th scope="col">Of what</th>
          <th scope="col" className="number">
            Needed
          </th>
          <th scope="col" className="number">
            Worked out
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, needed, worked]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td className="number">{needed}</td>
            <td className="number">{worked}</td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
