'use client';

import type { ReactNode } from 'react';
import { Dialog as RadixDialog } from 'radix-ui';
import { X } from 'lucide-react';

/**
 * The style that keeps the page behind a dialog from scrolling is put in by a library. It looks for
 * the page's nonce under this name; without one the page's policy would refuse the style.
 */
function lendNonce(): void {
  const { nonce } = document.querySelector<HTMLScriptElement>('script[nonce]') ?? {};
  Reflect.set(globalThis, '__webpack_nonce__', nonce);
}
if (typeof document !== 'undefined') lendNonce();

type DialogProps = {
  /** The button that opens it; leave out when `open` is given. */
  trigger?: ReactNode;
  title: string;
  /** One sentence on what this is about. */
  description?: ReactNode;
  open?: boolean;
  onOpenChange?: (open: boolean) => void;
  children: ReactNode;
};

/** A question that must be answered before going on. Focus goes in, Escape and the cross lead out. */
export function Dialog({ trigger, title, description, open, onOpenChange, children }: DialogProps) {
  return (
    <RadixDialog.Root open={open} onOpenChange={onOpenChange}>
      {trigger === undefined ? null : <RadixDialog.Trigger asChild>{trigger}</RadixDialog.Trigger>}
      <RadixDialog.Portal>
        <RadixDialog.Overlay className="fixed inset-0 z-40 bg-land-near/80" />
        <RadixDialog.Content
          {...(description === undefined ? { 'aria-describedby': undefined } : {})}
          className="fixed inset-x-0 bottom-0 z-50 max-h-[90dvh] overflow-y-auto border border-t-4 border-strong border-t-accent bg-panel p-5 text-ink sm:inset-auto sm:top-1/2 sm:left-1/2 sm:w-[min(34rem,calc(100vw-2rem))] sm:-translate-x-1/2 sm:-translate-y-1/2 sm:rounded-b-lg sm:p-6"
        >
          <div className="flex items-start justify-between gap-4">
            <RadixDialog.Title className="text-xl font-semibold">{title}</RadixDialog.Title>
            <RadixDialog.Close
              aria-label="Close"
              className="-mt-1 -me-2 inline-flex size-(--target) shrink-0 items-center justify-center rounded-md hover:bg-sunken"
            >
              <X aria-hidden="true" className="size-5" />
            </RadixDialog.Close>
          </div>
          {description === undefined ? null : (
            <RadixDialog.Description asChild>
              <div className="mt-1 max-w-measure text-soft">{description}</div>
            </RadixDialog.Description>
          )}
          <div className="mt-4">{children}</div>
        </RadixDialog.Content>
      </RadixDialog.Portal>
    </RadixDialog.Root>
  );
}

/** Wraps a button inside a Dialog that only closes it. */
export function DialogClose({ children }: { children: ReactNode }) {
  return <RadixDialog.Close asChild>{children}</RadixDialog.Close>;
}
