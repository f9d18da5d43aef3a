import { useId, type ReactNode } from 'react';
import { classNames } from './class-names';

type TableFrameProps = {
  /** Names the table; hidden from the eye when the heading above already says it. */
  caption: ReactNode;
  captionHidden?: boolean;
  /** Keeps the row names in view while the rest scrolls sideways. */
  stickyFirstColumn?: boolean;
  /** On a phone each row is a block, one cell below the other; its head is left to the ear. */
  stacked?: boolean;
  /** The full height of the table, for a short one or for print. */
  tall?: boolean;
  /** How many rows there are, where that varies: a short table shows them all without a frame to scroll. */
  rows?: number;
  /** The table's <thead> and <tbody>. Cells of numbers carry the class "number". */
  children: ReactNode;
  className?: string;
};

/** One class: the page goes on below, so a list of so many is not cut. Our judgement. */
const rowsInFull = 30;

/** A dense table whose head stays in view; on a phone it scrolls in its own frame, by keyboard too. */
export function TableFrame({
  caption,
  captionHidden = false,
  stickyFirstColumn = false,
  stacked = false,
  tall = false,
  rows,
  children,
  className,
}: TableFrameProps) {
  const captionId = useId();
  return (
    <div
      role="region"
      aria-labelledby={captionId}
      // A region that scrolls must be reachable by keyboard (2.1.1).
      // eslint-disable-next-line jsx-a11y/no-noninteractive-tabindex
      tabIndex={0}
      data-stacked={stacked ? '' : undefined}
      data-first-column={stickyFirstColumn ? 'sticky' : undefined}
      className={classNames(
        'table-frame relative overflow-auto rounded-b-lg border border-t-2 border-line border-t-strong bg-panel',
        !tall && (rows === undefined || rows > rowsInFull) && 'max-h-[75dvh]',
        className,
      )}
    >
      <table>
        <caption
          id={captionId}
          className={captionHidden ? 'sr-only' : 'px-3 py-2 text-start text-sm text-soft'}
        >
          {caption}
        </caption>
        {children}
      </table>
    </div>
  );
}
