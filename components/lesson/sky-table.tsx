import { TableFrame } from '@/components/ui/table-frame';
import type { SkyRow } from '@/lib/content/lesson-view';

/** What one would note down from the sky, with the degrees beside the fists. */
export function SkyTable({ title, rows }: { title: string; rows: readonly SkyRow[] }) {
  return (
    <div className="keep-together my-4">
      <TableFrame caption={title} tall stickyFirstColumn>
        <thead>
          <tr>
            <th scope="col">Name</th>
            <th scope="col">Looking</th>
            <th scope="col" className="number">
              Fists up
            </th>
            <th scope="col" className="number">
              Azimuth
            </th>
            <th scope="col" className="number">
              Altitude
            </th>
            <th scope="col" className="number">
              Magnitude
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.name}>
              <th scope="row">{row.name}</th>
              <td>{row.compass}</td>
              <td className="number">{row.fistsUp}</td>
              <td className="number">{Math.round(row.azimuthDeg) % 360}°</td>
              <td className="number">{Math.round(row.altitudeDeg)}°</td>
              <td className="number">
                {row.magnitude === null ? '' : row.magnitude.toFixed(1).replace('-', '−')}
              </td>
            </tr>
          ))}
        </tbody>
      </TableFrame>
    </div>
  );
}
