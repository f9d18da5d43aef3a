import type { ReactNode } from 'react';
import type { ShownSky } from './clock-view';
import { missInWords } from './clock-words';
import { LandingList } from './landing-list';
import { TwoSkies } from './two-skies';

/** The mount's sky over the real one, with what is to be read off it. */
export function SkyPane({ sky, landings }: { sky: ShownSky; landings: boolean }) {
  if (sky.overlay === null) {
    return (
      <Frame lead={sky.lead}>
        <div className="grid min-h-0 flex-1 place-items-center">
          <div className="size-40 rounded-full border-2 border-dashed border-(--sky-line)" />
        </div>
      </Frame>
    );
  }
  const { overlay, shown, lead } = sky;
  const both = shown === 'both';
  return (
    <Frame
      lead={both ? `${lead} On the whole the two lie ${missInWords(overlay.missDeg)} apart.` : lead}
      note={
        both
          ? 'Full stars: where they are, and + the pole. Rings: where the mount would point for them, and × its pole.'
          : shown === 'real'
            ? 'Full stars: where they are, and + the pole.'
            : 'Rings: where the mount would point for the stars, and × its pole.'
      }
    >
      <TwoSkies
        overlay={overlay}
        shown={shown}
        title={
          both
            ? `The whole sky twice: the mount’s lies ${missInWords(overlay.missDeg)} beside the real one`
            : shown === 'real'
              ? 'The whole sky as it is'
              : 'The whole sky as the mount believes it to be'
        }
        className="min-h-0 w-full flex-1"
      />
      {landings ? <LandingList overlay={overlay} /> : null}
    </Frame>
  );
}

function Frame({ lead, note, children }: { lead: string; note?: string; children: ReactNode }) {
  return (
    <div className="on-sky flex h-full min-h-0 flex-col gap-1 p-2 text-on-sky">
      <p className="text-sm font-semibold">{lead}</p>
      {children}
      {note === undefined ? null : <p className="text-sm text-on-sky-soft">{note}</p>}
    </div>
  );
}
