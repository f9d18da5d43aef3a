import { BenchResultView } from '@/components/grading/bench-result-view';
import { TableFrame } from '@/components/ui/table-frame';
import { entriesThatDiffer, formEntries } from '@/lib/clock/mount-form';
import type { ClockAndPlaceResult } from '@/lib/grading/bench/clock-and-place/clock-and-place-result';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import {
  afterAlignmentText,
  clockSlipWords,
  clockVerdict,
  criterionNames,
} from './clock-result-words';
import { causeNames, degText, missInWords, rowNames, rowText } from './clock-words';
import { overlayOf } from './overlay-stars';
import { TwoSkies } from './two-skies';

type ClockAndPlaceResultViewProps = {
  variant: ClockAndPlaceVariant;
  result: ClockAndPlaceResult;
  markShownAbove?: boolean;
};

/** What came of "Clock and place": for student and teacher alike. */
export function ClockAndPlaceResultView({
  variant,
  result,
  markShownAbove = false,
}: ClockAndPlaceResultViewProps) {
  const after = afterAlignmentText(result);
  return (
    <BenchResultView
      verdict={clockVerdict(variant, result)}
      result={result}
      criterionName={(id) => criterionNames[id]}
      gateWords={() => ({ title: '', text: '' })}
      slipWords={(slip) => clockSlipWords(variant, result, slip)}
      picture={<Picture variant={variant} result={result} />}
      markShownAbove={markShownAbove}
    >
      {result.stars.some(({ missDeg }) => missDeg > 0.05) ? <Misses result={result} /> : null}
      {after === null ? null : (
        <p className="max-w-measure">
          <strong className="font-semibold">And after an alignment?</strong> {after}
        </p>
      )}
    </BenchResultView>
  );
}

/** The two skies, beside the form as it was and as it should have been. */
function Picture({ variant, result }: Omit<ClockAndPlaceResultViewProps, 'markShownAbove'>) {
  const { right, summerTimeMinutes } = variant;
  const { form, compassDeg, missDeg } = result;
  const overlay = overlayOf(variant, form, compassDeg);
  const wrong = entriesThatDiffer(form, right, summerTimeMinutes);
  return (
    <div className="grid items-start gap-6 lg:grid-cols-2">
      {overlay === null ? null : (
        <figure>
          <TwoSkies
            overlay={overlay}
            shown="both"
            title={`The whole sky twice: the mount’s lies ${missInWords(missDeg)} beside the real one`}
            className="w-full max-w-xl"
          />
          <figcaption className="mt-1 max-w-measure text-sm text-soft">
            The whole sky, looking up: straight up is in the middle, north at the top, east on the
            left; each ring is a fist. Full stars and +: the real sky and its pole. Rings and ×:
            where the mount would point.
          </figcaption>
        </figure>
      )}
      <TableFrame caption="The form as it was handed in, and as the card has it" tall>
        <thead>
          <tr>
            <td />
            <th scope="col">Entered</th>
            <th scope="col">Right</th>
          </tr>
        </thead>
        <tbody>
          {formEntries.map((row) => (
            <tr key={row}>
              <th scope="row">
                {rowNames[row]}
                {wrong.includes(row) ? (
                  <span className="block font-normal text-danger">here it is off</span>
                ) : null}
              </th>
              <td className={wrong.includes(row) ? 'bg-danger-soft font-semibold' : undefined}>
                {rowText(row, form)}
              </td>
              <td>{rowText(row, right)}</td>
            </tr>
          ))}
          {variant.declinationDeg === null || compassDeg === null ? null : (
            <tr>
              <th scope="row">Start, on the compass</th>
              <td>{degText(compassDeg)}</td>
              <td>{degText((360 - variant.declinationDeg) % 360)}</td>
            </tr>
          )}
        </tbody>
      </TableFrame>
    </div>
  );
}

/** Each star's miss, and what of it came from which row. */
function Misses({ result }: { result: ClockAndPlaceResult }) {
  const causes = result.stars[0]?.shares.map(({ cause }) => cause) ?? [];
  const together = result.stars.some(({ togetherDeg }) => Math.abs(togetherDeg) >= 0.05);
  return (
    <TableFrame
      caption="By how much the tube would miss each star, and what of it comes from where"
      tall
    >
      <thead>
        <tr>
          <th scope="col">Star</th>
          <th scope="col">Misses by</th>
          {causes.map((cause) => (
            <th key={cause} scope="col">
              {causeNames[cause]}
            </th>
          ))}
          {together ? <th scope="col">Together</th> : null}
        </tr>
      </thead>
      <tbody>
        {result.stars.map(({ name, missDeg, shares, togetherDeg }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td className="number font-semibold">{degText(missDeg)}</td>
            {shares.map(({ cause, deg }) => (
              <td key={cause} className="number">
                {signedText(deg)}
              </td>
            ))}
            {together ? <td className="number">{signedText(togetherDeg)}</td> : null}
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

const signedText = (deg: number): string => `${deg < -0.05 ? '−' : ''}${degText(deg)}`;
