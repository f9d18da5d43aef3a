import { classNames } from './class-names';

export type ButtonVariant = 'primary' | 'quiet' | 'danger' | 'plain';
export type ButtonSize = 'normal' | 'large';

const shape =
  'inline-flex items-center justify-center gap-2 rounded-md text-center leading-tight font-semibold no-underline transition-colors select-none disabled:cursor-not-allowed disabled:opacity-60 aria-disabled:cursor-not-allowed aria-disabled:opacity-60';

/** One primary button on a screen: the lamp. Quiet ones are drawn in ink, plain ones read as text. */
const looks: Record<ButtonVariant, string> = {
  primary:
    'border border-accent bg-accent text-on-accent shadow-[inset_0_-2px_0_var(--lamp-edge)] hover:bg-accent-hover active:shadow-none',
  quiet: 'border border-strong bg-panel text-ink hover:border-ink hover:bg-sunken',
  danger:
    'border border-danger bg-danger-soft text-danger hover:shadow-[inset_0_0_0_1px_var(--danger)]',
  plain: 'text-accent underline decoration-1 underline-offset-4 hover:decoration-2',
};

const sizes: Record<ButtonSize, string> = {
  normal: 'min-h-(--target) px-4 py-1.5 text-base',
  large: 'min-h-[3.25rem] px-6 py-2.5 text-lg',
};

export function buttonLook(variant: ButtonVariant, size: ButtonSize, extra?: string): string {
  return classNames(shape, looks[variant], sizes[size], variant === 'plain' && 'px-1', extra);
}
