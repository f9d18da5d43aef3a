import type { ComponentProps } from 'react';
import { buttonLook, type ButtonSize, type ButtonVariant } from './button-look';

export type ButtonProps = ComponentProps<'button'> & {
  variant?: ButtonVariant;
  size?: ButtonSize;
  /** Work is under way: further presses do nothing, focus stays where it is. */
  busy?: boolean;
};

/** A button that does something here. For going somewhere, use LinkButton. */
export function Button({
  variant = 'quiet',
  size = 'normal',
  busy = false,
  type = 'button',
  className,
  onClick,
  children,
  ...rest
}: ButtonProps) {
  return (
    <button
      {...rest}
      type={type}
      aria-disabled={busy || undefined}
      aria-busy={busy || undefined}
      onClick={
        busy
          ? (event) => {
              event.preventDefault();
            }
          : onClick
      }
      className={buttonLook(variant, size, className)}
    >
      {busy ? <BusyMark /> : null}
      {children}
    </button>
  );
}

/** Three lamps in a row; still for readers who asked for less motion. */
function BusyMark() {
  return (
    <span aria-hidden="true" className="inline-flex gap-0.5">
      <span className="size-1.5 animate-pulse rounded-full bg-current" />
      <span className="size-1.5 animate-pulse rounded-full bg-current [animation-delay:150ms]" />
      <span className="size-1.5 animate-pulse rounded-full bg-current [animation-delay:300ms]" />
    </span>
  );
}
