import { arcminuteInWords, angleWordsFor } from '@/components/sky/angle-words';
import { Panel } from '@/components/ui/panel';
import { TableFrame } from '@/components/ui/table-frame';
import type { RehearsalMiss } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-result';
import { chainOf, counts, linkLength, type ChainLink } from './miss-chain';
import { MissFigure } from './miss-figure';
import {
  causeWords,
  missInWords,
  missTitle,
  shareInWords,
  untracedInWords,
  type TracedMiss,
} from './miss-words';

/** Each star that was looked for in an eyepiece: how far off it was, and what moved the tube there. */
export function MissesSection({ misses }: { misses: readonly RehearsalMiss[] }) {
  return (
    <Panel title="What each slip cost at the eyepiece">
      {misses.length === 0 ? (
        <p className="max-w-measure">
          The mount was sent to no star, so nothing came back at the eyepiece.
        </p>
      ) : (
        <div className="space-y-8">
          <p className="max-w-measure text-sm text-soft">
            {arcminuteInWords} The star is where the arrows begin; the circle is what the eyepiece
            showed where the tube came to rest. Each arrow is what one cause moved it, as it lies on
            the sky, to scale.
          </p>
          {misses.map((miss) => (
            <Miss key={`${miss.kind} ${miss.name}`} miss={miss} />
          ))}
        </div>
      )}
    </Panel>
  );
}

function Miss({ miss }: { miss: RehearsalMiss }) {
  const { attribution } = miss;
  return (
    <section className="space-y-3">
      <h3 className="font-semibold">{missTitle(miss)}</h3>
      <p className="max-w-measure">
        {attribution.ok ? missInWords(miss, attribution) : untracedInWords(attribution)}
      </p>
      {attribution.ok && attribution.missArcmin >= 1 ? (
        <Traced miss={miss} traced={attribution} />
      ) : null}
    </section>
  );
}

function Traced({ miss, traced }: { miss: RehearsalMiss; traced: TracedMiss }) {
  const links = chainOf(traced);
  const shown = links.filter(counts);
  return (
    <div className="grid items-start gap-4 md:grid-cols-[minmax(0,22rem)_minmax(0,1fr)]">
      <MissFigure
        label={`${missTitle(miss)}: the star, the way of the tube from it cause by cause, and the field of the eyepiece`}
        links={links}
        miss={traced.miss}
        fieldRadiusArcmin={miss.fieldRadiusArcmin}
      />
      <CauseTable miss={miss} traced={traced} shown={shown} hidden={links.length - shown.length} />
    </div>
  );
}

function CauseTable({
  miss,
  traced: { missArcmin },
  shown,
  hidden,
}: {
  miss: RehearsalMiss;
  traced: TracedMiss;
  shown: readonly ChainLink[];
  hidden: number;
}) {
  const words = angleWordsFor(
    missArcmin,
    ...shown.flatMap((link) => [link.arcmin, linkLength(link)]),
  );
  const rest = missArcmin - shown.reduce((sum, { arcmin }) => sum + arcmin, 0);
  return (
    <TableFrame caption={`Where it came from: ${missTitle(miss)}`} captionHidden tall>
      <thead>
        <tr>
          <th scope="col">Arrow</th>
          <th scope="col">Cause</th>
          <th scope="col" className="number">
            Moved the tube
          </th>
          <th scope="col" className="number">
            Of the miss
          </th>
        </tr>
      </thead>
      <tbody>
        {shown.map((link, index) => (
          <tr key={link.cause ?? 'together'}>
            <td className="number">{index + 1}</td>
            <th scope="row">
              {link.cause === null ? 'several of these together' : causeWords[link.cause]}
            </th>
            <td className="number">{words(linkLength(link))}</td>
            <td className="number">{shareInWords(link.arcmin, words)}</td>
          </tr>
        ))}
        {hidden === 0 || Math.abs(rest) < 0.05 ? null : (
          <tr>
            <td />
            <th scope="row">all the rest, too small to draw</th>
            <td />
            <td className="number">{shareInWords(rest, words)}</td>
          </tr>
        )}
        <tr>
          <td />
          <th scope="row">the whole miss</th>
          <td />
          <td className="number font-semibold">{words(missArcmin)}</td>
        </tr>
      </tbody>
    </TableFrame>
  );
}
