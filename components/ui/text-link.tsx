import Link from 'next/link';
import type { ComponentProps } from 'react';
import { classNames } from './class-names';

/** A link in running text: underlined, never told by colour alone. */
export function TextLink({ className, ...rest }: ComponentProps<typeof Link>) {
  return <Link {...rest} className={classNames('link', className)} />;
}
