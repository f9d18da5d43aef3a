'use client';

import { Printer } from 'lucide-react';
import { Button } from './button';

export function PrintButton({ children = 'Print' }: { children?: string }) {
  return (
    <Button
      className="no-print"
      onClick={() => {
        window.print();
      }}
    >
      <Printer aria-hidden="true" className="size-4.5" />
      {children}
    </Button>
  );
}
