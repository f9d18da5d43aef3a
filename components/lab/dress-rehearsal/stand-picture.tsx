import { standAfter } from '@/lib/assembly/stand';
import { assemblySteps } from '@/lib/assembly/steps';
import { StandDrawing } from '../put-it-together/stand-drawing';
import { standInWords } from '../put-it-together/stand-words';
import type { Evening } from './evening';

/** The telescope as it comes down, step by step. */
export function StandPicture({ evening: { draft, variant } }: { evening: Evening }) {
  const taken = draft.packedUp.flatMap((step) => assemblySteps.filter((one) => one === step));
  const stand = standAfter(taken, 'built');
  return (
    <div className="on-sky min-h-[14rem] flex-1 p-2">
      <StandDrawing stand={stand} kind={variant.kit.tubeType} label={standInWords(stand)} />
    </div>
  );
}
