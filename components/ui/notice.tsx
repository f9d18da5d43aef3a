import type { ReactNode } from 'react';
import { CircleAlert, CircleCheck, Info, TriangleAlert } from 'lucide-react';
import { classNames } from './class-names';

export type NoticeTone = 'info' | 'caution' | 'danger' | 'good';

const looks = {
  info: { Icon: Info, box: 'border-strong bg-sunken', title: 'text-ink', said: 'Note' },
  caution: {
    Icon: TriangleAlert,
    box: 'border-caution bg-caution-soft',
    title: 'text-caution',
    said: 'Caution',
  },
  danger: {
    Icon: CircleAlert,
    box: 'border-danger bg-danger-soft',
    title: 'text-danger',
    said: 'Problem',
  },
  good: { Icon: CircleCheck, box: 'border-good bg-good-soft', title: 'text-good', said: 'Done' },
} as const;

type NoticeProps = {
  tone?: NoticeTone;
  title: ReactNode;
  children?: ReactNode;
  /** Read out when it appears: 'alert' at once, 'status' when there is a pause. */
  live?: 'alert' | 'status';
  className?: string;
};

/** Something to know before going on. The tone is told by shape and words, not by colour alone. */
export function Notice({ tone = 'info', title, children, live, className }: NoticeProps) {
  const { Icon, box, title: titleLook, said } = looks[tone];
  return (
    <div
      role={live}
      className={classNames(
        'keep-together flex max-w-[40rem] gap-3 rounded-md border border-s-4 px-4 py-3',
        box,
        className,
      )}
    >
      <Icon aria-hidden="true" className={classNames('mt-[0.2em] size-5 shrink-0', titleLook)} />
      <div className="min-w-0">
        <p className={classNames('font-semibold', titleLook)}>
          <span className="sr-only">{said}: </span>
          {title}
        </p>
        {children === undefined ? null : <div className="mt-0.5 space-y-2">{children}</div>}
      </div>
    </div>
  );
}
