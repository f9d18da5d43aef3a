import type { SaveState } from './draft-saver';

/** How saving goes, in one short sentence. */
export function saveInWords(state: SaveState): string {
  switch (state.state) {
    case 'saved':
      return '';
    case 'saving':
      return 'Saving …';
    case 'kept':
      return 'No connection: kept on this device, will be sent.';
    case 'refused':
      return `Not saved: ${state.message}`;
  }
}
