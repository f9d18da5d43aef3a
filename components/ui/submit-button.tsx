'use client';

import { useFormStatus } from 'react-dom';
import { Button, type ButtonProps } from './button';

type SubmitButtonProps = Omit<ButtonProps, 'type' | 'busy'> & {
  /** Said while the form is on its way, such as "Saving". */
  busyLabel?: string;
};

/** Sends the form it stands in; a second press while it is on its way does nothing. */
export function SubmitButton({
  variant = 'primary',
  busyLabel,
  children,
  ...rest
}: SubmitButtonProps) {
  const { pending } = useFormStatus();
  return (
    <Button {...rest} variant={variant} type="submit" busy={pending}>
      {pending && busyLabel !== undefined ? busyLabel : children}
    </Button>
  );
}
