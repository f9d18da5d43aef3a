'use client';

import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import type { TubeHand } from './use-tube-hand';

/** Hand, stop screw and clamp: what the tube hangs on. The same in the drawing and in the table. */
export function TubeControls({ state, act }: TubeHand) {
  if (state.fallen)
    return (
      <div className="space-y-2">
        <Notice tone="danger" title="The tube slid out of the clamp and fell">
          Outdoors that is a broken telescope or a hurt foot. A hand goes under the tube before the
          clamp opens, and stays until clamp and stop screw are tight.
        </Notice>
        <Button
          variant="primary"
          onClick={() => {
            act({ do: 'pick-up' });
          }}
        >
          Put it back, a hand under it
        </Button>
      </div>
    );
  return (
    <div role="group" aria-label="What holds the tube" className="flex flex-wrap gap-2">
      <Button
        variant={state.handOn ? 'quiet' : 'primary'}
        onClick={() => {
          act({ do: 'hand', on: !state.handOn });
        }}
      >
        {state.handOn ? 'Let go' : 'Hand on the tube'}
      </Button>
      <Button
        onClick={() => {
          act({ do: 'stop', in: !state.stopIn });
        }}
      >
        {state.stopIn ? 'Stop screw out' : 'Stop screw in'}
      </Button>
      <Button
        onClick={() => {
          act({ do: 'clamp', open: !state.clampOpen });
        }}
      >
        {state.clampOpen ? 'Lock clamp' : 'Open clamp'}
      </Button>
    </div>
  );
}
