import { labText } from '@/components/grading/template-text';
import { Panel } from '@/components/ui/panel';
import { Select } from '@/components/ui/select';
import { labOptions, labs } from '@/lib/variants/labs';
import { startPracticeRound } from './actions';
import { StartForm } from './start-form';

/** Questions are practised on the lessons' own pages, one by one. */
const openLabs = labs.filter((lab) => labOptions[lab].withoutSky !== true);

/** Practice under a sky that is new each time. */
export function PracticePanel({
  kits,
  variant,
}: {
  kits: readonly { id: string; name: string }[];
  /** Quiet while something else is waiting. */
  variant: 'primary' | 'quiet';
}) {
  return (
    <Panel title="Practise as often as you like">
      <p className="mb-4 max-w-measure">
        A new evening each time, with hints and the reason at once. Practice never counts for a
        mark.
      </p>
      <StartForm action={startPracticeRound} label="Practise" variant={variant}>
        <div className="flex min-w-44 flex-col gap-1">
          <label htmlFor="practice-lab" className="text-sm font-semibold">
            Lab
          </label>
          <Select id="practice-lab" name="lab" defaultValue={openLabs[0]}>
            {openLabs.map((lab) => (
              <option key={lab} value={lab}>
                {labText[lab].name}
              </option>
            ))}
          </Select>
        </div>
        <div className="flex min-w-44 flex-col gap-1">
          <label htmlFor="practice-kit" className="text-sm font-semibold">
            Telescope
          </label>
          <Select id="practice-kit" name="kitId" defaultValue={kits[0]?.id}>
            {kits.map((kit) => (
              <option key={kit.id} value={kit.id}>
                {kit.name}
              </option>
            ))}
          </Select>
        </div>
      </StartForm>
    </Panel>
  );
}
