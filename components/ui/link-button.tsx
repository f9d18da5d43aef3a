import Link from 'next/link';
import type { ComponentProps } from 'react';
import { buttonLook, type ButtonSize, type ButtonVariant } from './button-look';

type LinkButtonProps = ComponentProps<typeof Link> & { variant?: ButtonVariant; size?: ButtonSize };

/** A link that carries the weight of a button: the one next step of a page. */
export function LinkButton({
  variant = 'quiet',
  size = 'normal',
  className,
  ...rest
}: LinkButtonProps) {
  return <Link {...rest} className={buttonLook(variant, size, className)} />;
}
