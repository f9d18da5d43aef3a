'use client';

import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import { legName } from './level-words';
import type { TripodHand } from './use-tripod-hand';

/** What concerns the whole stand: tube, helping hands, arm. The same in the drawing and in the table. */
export function StandControls({ state, act, armTurns }: TripodHand & { armTurns: boolean }) {
  return (
    <div className="space-y-2">
      {state.ranIn === null ? null : (
        <Notice tone="danger" title={`Leg ${legName(state.ranIn)} ran in under the tube`}>
          Its lock was open and nobody held the weight: outdoors the telescope goes over, on the
          ground or on somebody. Take the tube off, or have it held, before a lock is opened.
        </Notice>
      )}
      <div role="group" aria-label="The whole stand" className="flex flex-wrap gap-2">
        {armTurns ? (
          <Button
            onClick={() => {
              act({ do: 'turn-arm' });
            }}
          >
            Turn the arm half round
          </Button>
        ) : null}
        <Button
          onClick={() => {
            act({ do: state.tubeOn ? 'tube-off' : 'tube-on' });
          }}
        >
          {state.tubeOn ? 'Take the tube off' : 'Put the tube on'}
        </Button>
        {state.tubeOn || state.held ? (
          <Button
            onClick={() => {
              act({ do: state.held ? 'let-go' : 'hold' });
            }}
          >
            {state.held ? 'Let the tripod carry it' : 'Have the weight held'}
          </Button>
        ) : null}
      </div>
    </div>
  );
}
