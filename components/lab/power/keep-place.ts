import type { MouseEvent } from 'react';

/** Leads the focus to the row's name: the button that was pressed goes away with what it did. */
export const keepPlaceInRow = ({ currentTarget }: MouseEvent<HTMLElement>): void => {
  currentTarget.closest('tr')?.querySelector<HTMLElement>('th')?.focus();
};
