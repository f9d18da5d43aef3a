import { markText } from '@/components/grading/mark-text';
import { TableFrame } from '@/components/ui/table-frame';
import { openOnPaper } from './open-on-paper';

const classes = 10;
const width = 300;
const height = 110;
const floor = 84;
const step = width / classes;

/** Marks in tens: 100 belongs to the last. */
const binsOf = (marks: readonly number[]): number[] =>
  Array.from(
    { length: classes },
    (_, index) =>
      marks.filter((mark) => Math.min(classes - 1, Math.max(0, Math.floor(mark / 10))) === index)
        .length,
  );

const rangeText = (index: number): string =>
  index === classes - 1 ? '90–100' : `${String(index * 10)}–${String(index * 10 + 9)}`;

/** How the marks lie, in tens, with the pass mark; the same figures as a table below it. */
export function MarksChart({
  title,
  marks,
  passMark,
}: {
  title: string;
  marks: readonly number[];
  passMark: number;
}) {
  const bins = binsOf(marks);
  const most = Math.max(...bins, 1);
  const passAt = (passMark / 100) * width;
  return (
    <figure className="keep-together">
      <svg
        viewBox={`-4 -2 ${String(width + 8)} ${String(height)}`}
        className="block h-auto w-full max-w-md"
        aria-hidden="true"
      >
        {bins.map((count, index) => {
          const tall = (count / most) * (floor - 18);
          const below = (index + 1) * 10 <= passMark;
          return (
            <g key={index}>
              {count === 0 ? null : (
                <>
                  <rect
                    x={index * step + 2}
                    y={floor - tall}
                    width={step - 4}
                    height={tall}
                    strokeWidth="1.5"
                    className={
                      below
                        ? 'fill-sunken stroke-strong'
                        : 'fill-accent stroke-ink print:fill-[#999999]'
                    }
                  />
                  <text
                    x={(index + 0.5) * step}
                    y={floor - tall - 4}
                    textAnchor="middle"
                    fontSize="12"
                    className="fill-ink"
                  >
                    {count}
                  </text>
                </>
              )}
            </g>
          );
        })}
        <line x1="0" x2={width} y1={floor} y2={floor} strokeWidth="1.5" className="stroke-strong" />
        <line
          x1={passAt}
          x2={passAt}
          y1="8"
          y2={floor + 5}
          strokeWidth="1.5"
          strokeDasharray="4 3"
          className="stroke-ink"
        />
        {[0, 50, 100].map((mark) => (
          <text
            key={mark}
            x={(mark / 100) * width}
            y={floor + 18}
            textAnchor={mark === 0 ? 'start' : mark === 100 ? 'end' : 'middle'}
            fontSize="12"
            className="fill-soft"
          >
            {mark}
          </text>
        ))}
      </svg>
      <figcaption className="text-xs text-soft">
        Marks in tens, and how many students. Dashed: the pass mark, {markText(passMark)}; hollow
        bars lie below it.
      </figcaption>
      <details className={`mt-1 text-sm ${openOnPaper}`}>
        <summary className="link inline-flex min-h-(--target-small) items-center">
          These figures as a table<span className="sr-only">: {title}</span>
        </summary>
        <TableFrame
          caption={`Marks of “${title}”`}
          captionHidden
          tall
          className="print:[&_:is(th,td)]:py-0!"
        >
          <thead>
            <tr>
              <th scope="col">Marks</th>
              <th scope="col" className="number">
                Students
              </th>
            </tr>
          </thead>
          <tbody>
            {bins.map((count, index) => (
              <tr key={index}>
                <th scope="row">{rangeText(index)}</th>
                <td className="number">{count}</td>
              </tr>
            ))}
          </tbody>
        </TableFrame>
      </details>
    </figure>
  );
}
