import type { ComponentProps } from 'react';
import { TextLink } from '@/components/ui/text-link';

/** How Markdown's own elements look in a lesson: one column of comfortable measure. */
export const runningText = {
  h2: ({ children, ...rest }: ComponentProps<'h2'>) => (
    <h2 {...rest} className="mt-10 mb-2 scroll-mt-6 text-xl font-semibold">
      {children}
    </h2>
  ),
  h3: ({ children, ...rest }: ComponentProps<'h3'>) => (
    <h3 {...rest} className="mt-6 mb-1 text-lg font-semibold">
      {children}
    </h3>
  ),
  p: (props: ComponentProps<'p'>) => <p {...props} className="my-3 max-w-measure" />,
  ul: (props: ComponentProps<'ul'>) => (
    <ul {...props} className="my-3 max-w-measure list-disc space-y-1 ps-6" />
  ),
  ol: (props: ComponentProps<'ol'>) => (
    <ol {...props} className="my-3 max-w-measure list-decimal space-y-1 ps-6" />
  ),
  a: ({ href = '#', children }: ComponentProps<'a'>) => <TextLink href={href}>{children}</TextLink>,
};
