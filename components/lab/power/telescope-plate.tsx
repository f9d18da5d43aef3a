import { darkPaint, fittingPaint, mountPaint } from '@/components/telescope/paint';
import type { PowerBench } from '@/lib/power/power-bench';
import type { TelescopeNeeds } from '@/lib/power/supply';
import type { BenchLayout } from './bench-layout';
import { PolaritySymbol } from './polarity-symbol';
import type { Readout } from './power-play';
import { centreText } from './power-words';
import { SvgButton } from './svg-button';

type TelescopePlateProps = {
  layout: BenchLayout;
  needs: TelescopeNeeds;
  bench: PowerBench;
  readout: Readout;
  onSocket: () => void;
  onSwitch: () => void;
  onHandSocket: () => void;
};

/** The telescope's own plate: supply socket with its label, lamp, switch, and the hand control's socket. */
export function TelescopePlate(props: TelescopePlateProps) {
  const { layout, needs, bench } = props;
  const { x, y, width, height } = layout.plate;
  const middle = height / 2 - 8;
  return (
    <g transform={`translate(${String(x)} ${String(y)})`}>
      <rect width={width} height={height} rx="8" {...mountPaint} />
      <SvgButton
        label={`Supply socket: ${String(needs.nominalV)} volts, at most ${String(needs.slewingA)} amperes, ${centreText(needs.centre)}. ${bench.plugged === null ? 'Empty.' : 'Take the plug out.'}`}
        hit={{ x: 6, y: 4, width: 56, height: height - 30 }}
        onPress={props.onSocket}
      >
        <circle cx="34" cy={middle} r="15" {...darkPaint} />
        <circle cx="34" cy={middle} r="4" {...fittingPaint} />
        {bench.plugged === null ? null : (
          <circle
            cx="34"
            cy={middle}
            r="11"
            fill="var(--land-near)"
            stroke="var(--sky-lamp)"
            strokeWidth="3"
          />
        )}
      </SvgButton>
      <g transform={`translate(104 ${String(middle)})`}>
        <PolaritySymbol centre={needs.centre} colour="var(--on-sky)" />
      </g>
      <text x="14" y={height - 11} fontSize="13.5" fontWeight="600" fill="var(--on-sky)">
        {needs.nominalV} V d.c. {needs.slewingA} A
      </text>
      <Lamp x={width * 0.565} y={middle} readout={props.readout} />
      <PowerSwitch x={width * 0.7} y={middle} on={bench.on} onPress={props.onSwitch} />
      <HandSocket
        x={width - 38}
        y={middle}
        labelY={height - 11}
        connected={bench.handControl}
        onPress={props.onHandSocket}
      />
    </g>
  );
}

/** Lit: with rays. Flickering or starting afresh: half of it. Dark: a ring. */
function Lamp({ x, y, readout }: { x: number; y: number; readout: Readout }) {
  const { computer, restarted } = readout;
  const lit = (computer === 'running' && !restarted) || computer === 'over-voltage';
  const half = computer === 'too-few-volts' || restarted;
  return (
    <g transform={`translate(${String(x)} ${String(y)})`} aria-hidden="true">
      <circle
        r="7"
        fill={lit ? 'var(--sky-lamp)' : 'var(--land-near)'}
        stroke="var(--on-sky-soft)"
      />
      {half ? <path d="M-7 0 A7 7 0 0 0 7 0 Z" fill="var(--sky-lamp)" /> : null}
      {lit ? (
        <path
          d="M0 -11 V-16 M0 11 V16 M-11 0 H-16 M11 0 H16 M-8 -8 L-11 -11 M8 -8 L11 -11 M-8 8 L-11 11 M8 8 L11 11"
          stroke="var(--sky-lamp)"
          strokeWidth={computer === 'over-voltage' ? 4 : 2}
        />
      ) : null}
    </g>
  );
}

function PowerSwitch({
  x,
  y,
  on,
  onPress,
}: {
  x: number;
  y: number;
  on: boolean;
  onPress: () => void;
}) {
  return (
    <SvgButton
      label={on ? 'Switch: on. Switch off.' : 'Switch: off. Switch on.'}
      hit={{ x: x - 23, y: y - 34, width: 46, height: 80 }}
      pressed={on}
      onPress={onPress}
    >
      <g transform={`translate(${String(x)} ${String(y)})`}>
        <rect x="-15" y="-25" width="30" height="50" rx="4" {...darkPaint} />
        <rect x="-12" y={on ? -22 : -1} width="24" height="23" rx="3" {...fittingPaint} />
        <text
          y={on ? 17 : -6}
          fontSize="13"
          fontWeight="700"
          textAnchor="middle"
          fill="var(--on-sky)"
        >
          {on ? 'on' : 'off'}
        </text>
      </g>
    </SvgButton>
  );
}

type HandSocketProps = {
  x: number;
  y: number;
  labelY: number;
  connected: boolean;
  onPress: () => void;
};

function HandSocket({ x, y, labelY, connected, onPress }: HandSocketProps) {
  return (
    <SvgButton
      label={
        connected
          ? 'Hand control: connected. Take it off.'
          : 'Hand control: not connected. Connect it.'
      }
      hit={{ x: x - 28, y: y - 30, width: 62, height: 76 }}
      pressed={connected}
      onPress={onPress}
    >
      <rect x={x - 15} y={y - 12} width="30" height="24" rx="3" {...darkPaint} />
      {connected ? (
        <rect
          x={x - 11}
          y={y - 8}
          width="22"
          height="16"
          rx="2"
          fill="var(--land-near)"
          stroke="var(--sky-lamp)"
          strokeWidth="3"
        />
      ) : (
        <path
          d={`M${String(x - 8)} ${String(y)} h16`}
          stroke="var(--on-sky-soft)"
          strokeWidth="3"
        />
      )}
      <text x={x - 12} y={labelY} fontSize="13" textAnchor="end" fill="var(--on-sky-soft)">
        hand control
      </text>
    </SvgButton>
  );
}
