'use client';

import { Notice } from '@/components/ui/notice';
import { isWired, type PowerTemplate } from '@/lib/variants/bench/power/power-variant';
import { NightCard } from './night-card';
import { benchOf, readoutOf, type PowerViewProps } from './power-play';
import { PowerQuestions } from './power-questions';
import { taskText } from './power-task';
import { ampsText, computerWords, voltsText } from './power-words';

/** The task, what the bench shows, what is asked beside it, and what to beware of. */
export function PowerPanel(props: PowerViewProps) {
  const { variant } = props;
  return (
    <div className="space-y-4">
      <p>{taskText[variant.template]}</p>
      {isWired(variant) ? <State {...props} /> : <NightCard variant={variant} />}
      <PowerQuestions {...props} />
      <Notice tone="caution" title={cautions[variant.template].title}>
        {cautions[variant.template].text}
      </Notice>
    </div>
  );
}

function State({ variant, draft }: PowerViewProps) {
  const { bench } = benchOf(variant, draft);
  const { volts, amps, computer, slewing, restarted } = readoutOf(variant, draft, bench);
  const lines = [
    ['At the socket', `${voltsText(volts)}, ${ampsText(amps)}`],
    [
      'The telescope',
      restarted
        ? 'Starts afresh: it has forgotten its alignment'
        : slewing
          ? 'Slewing at full speed'
          : computerWords[computer],
    ],
    ['Hand control', bench.handControl ? 'connected' : 'not connected'],
  ];
  return (
    <dl className="grid grid-cols-[auto_minmax(0,1fr)] gap-x-3 gap-y-0.5 rounded-md bg-sunken px-3 py-2 text-sm">
      {lines.map(([name, value]) => (
        <div key={name} className="contents">
          <dt className="text-soft">{name}</dt>
          <dd className="font-semibold tabular-nums">{value}</dd>
        </div>
      ))}
    </dl>
  );
}

const cells = {
  title: 'Cells',
  text: 'Match the kind, never mix old and new. Never charge cells that are not made for it. A cell that is reversed is forced to charge: it can get hot and leak.',
};
const cautions: Readonly<Record<PowerTemplate, { title: string; text: string }>> = {
  'fill-the-holder': cells,
  'find-the-reversed': cells,
  'last-the-night': cells,
  'switch-on': cells,
  'choose-the-supply': {
    title: 'Mains outdoors',
    text: 'Students use batteries. A mains adapter is the teacher’s: dry, on a protected socket, by local electrical rules and a qualified person’s word.',
  },
};
