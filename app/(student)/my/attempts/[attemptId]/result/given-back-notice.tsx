import { Notice } from '@/components/ui/notice';
import type { NextStep } from '../../../assignment-standing';
import { givenBackTooLate } from '../../../given-back-words';

/** Above the result of an attempt that was given back, until another is started. */
export function GivenBackNotice({ step }: { step: NextStep['kind'] | undefined }) {
  return (
    <Notice tone="caution" title="Given back for another try">
      <p>
        {step === 'too-late'
          ? givenBackTooLate
          : 'Your teacher gives you one more attempt and says below what to do better.'}
      </p>
    </Notice>
  );
}
