'use client';

import { EyepiecePane } from './eyepiece-pane';
import type { FinderProps } from './finder-hand';
import { FinderPane } from './finder-pane';
import { Panorama } from './panorama';

/** The scene with the tube's mark; below it what eyepiece and finder show, and what moves them. */
export function FinderDrawing(props: FinderProps) {
  return (
    <div className="on-sky h-full [container-type:size]">
      <div className="h-full overflow-y-auto">
        <Panorama {...props} />
        <div className="grid grid-cols-2">
          <EyepiecePane {...props} />
          <FinderPane {...props} />
        </div>
      </div>
    </div>
  );
}
