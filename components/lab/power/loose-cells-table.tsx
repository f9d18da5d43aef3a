import { TableFrame } from '@/components/ui/table-frame';
import { cellVoltage } from '@/lib/power/cell';
import { loose } from '@/lib/power/power-bench';
import { benchOf, type PowerViewProps } from './power-play';
import { cellReads, kindNames } from './power-words';

/** Every cell with what a meter reads across it: those that lie on the bench, and those in the holder. */
export function LooseCellsTable({ variant, draft }: PowerViewProps) {
  const { bench } = benchOf(variant, draft);
  const onBench = loose(variant.setup, bench);
  return (
    <TableFrame caption="Cells, one by one across the meter">
      <thead>
        <tr>
          <th scope="col">Cell</th>
          <th scope="col">Printed on it</th>
          <th scope="col" className="number">
            Meter
          </th>
          <th scope="col">Where</th>
        </tr>
      </thead>
      <tbody>
        {variant.setup.cells.map((cell) => (
          <tr key={cell.id}>
            <th scope="row">{cell.id}</th>
            <td>{kindNames[cell.kind]}</td>
            <td className="number">{cellReads(cellVoltage(cell))}</td>
            <td>{onBench.includes(cell) ? 'on the bench' : 'in the holder'}</td>
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
