import { angleInWords } from '@/components/sky/angle-words';
import type { LevelResult } from '@/lib/grading/bench/level/level-result';
import { tiltConsequences, type TiltConsequences } from '@/lib/levelling/tilt-consequences';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { degreesText } from './level-words';

/** What a tilt does at worst anywhere from 20° to 80° up, as the mechanics have it, side by side. */
export function LevelCosts({ variant, result }: { variant: LevelVariant; result: LevelResult }) {
  const { question } = variant;
  const { found, left } = result;
  const columns: { name: string; tiltDeg: number; costs: TiltConsequences }[] = [
    {
      name: 'As it was found',
      tiltDeg: found.tiltDeg,
      costs: tiltConsequences(found, question.first, question.second),
    },
    { name: 'As you left it', tiltDeg: left.tiltDeg, costs: result.leftCosts },
    {
      name: 'In the question',
      tiltDeg: question.tiltDeg,
      costs: tiltConsequences(question, question.first, question.second),
    },
  ];
  return (
    <div className="space-y-3">
      <div className="table-frame overflow-x-auto">
        <table>
          <caption className="sr-only">What a tilt costs, at worst</caption>
          <thead>
            <tr>
              <th scope="col">Misses at worst</th>
              {columns.map(({ name, tiltDeg }) => (
                <th key={name} scope="col" className="number">
                  {name}: {degreesText(tiltDeg)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">First slews, before any alignment</th>
              {columns.map(({ name, costs }) => (
                <td key={name} className="number">
                  {angleInWords(costs.firstSlewsArcmin)}
                </td>
              ))}
            </tr>
            <tr>
              <th scope="row">After two stars, centred well</th>
              {columns.map(({ name, costs }) => (
                <td key={name} className="number">
                  {costs.afterTwoStarsArcmin === null
                    ? 'refused: no base leans so far'
                    : costs.afterTwoStarsArcmin < 0.1
                      ? 'less than 0.1′'
                      : angleInWords(costs.afterTwoStarsArcmin)}
                </td>
              ))}
            </tr>
            <tr>
              <th scope="row">A computer that takes the base as level, set on one star</th>
              {columns.map(({ name, costs }) => (
                <td key={name} className="number">
                  {angleInWords(costs.takenAsLevelArcmin)}
                </td>
              ))}
            </tr>
          </tbody>
        </table>
      </div>
      <p className="max-w-measure">
        So level is level enough when the first slew still lands near enough to find the star. Two
        stars take the rest out. What they cannot take out is a tripod that moves after them: a foot
        that sinks, a leg that slips.
      </p>
    </div>
  );
}
