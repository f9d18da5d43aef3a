'use client';

import type { ReactNode } from 'react';
import { Tabs as RadixTabs } from 'radix-ui';

export type Tab = { id: string; label: ReactNode; content: ReactNode };

type TabsProps = {
  /** Names the row of tabs for screen readers. */
  label: string;
  tabs: readonly Tab[];
  defaultTab?: string;
  value?: string;
  onValueChange?: (id: string) => void;
};

/** Views of the same thing, one at a time. Arrow keys move along the row. */
export function Tabs({ label, tabs, defaultTab, value, onValueChange }: TabsProps) {
  return (
    <RadixTabs.Root
      {...(value === undefined ? { defaultValue: defaultTab ?? tabs[0]?.id } : { value })}
      onValueChange={onValueChange}
    >
      <RadixTabs.List
        aria-label={label}
        className="no-print flex flex-wrap gap-x-1 border-b-2 border-strong"
      >
        {tabs.map((tab) => (
          <RadixTabs.Trigger
            key={tab.id}
            value={tab.id}
            className="-mb-0.5 min-h-(--target) border-b-4 border-transparent px-3 pt-1 text-soft hover:text-ink data-[state=active]:border-accent data-[state=active]:font-semibold data-[state=active]:text-ink"
          >
            {tab.label}
          </RadixTabs.Trigger>
        ))}
      </RadixTabs.List>
      {tabs.map((tab) => (
        <RadixTabs.Content key={tab.id} value={tab.id} className="pt-4">
          {tab.content}
        </RadixTabs.Content>
      ))}
    </RadixTabs.Root>
  );
}
