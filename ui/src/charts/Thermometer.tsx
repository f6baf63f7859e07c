import { roundTicks } from '../lib/ticks';
import { inUnit, type UnitChoice } from '../lib/units';

interface Props {
  readonly ceiling: number;
  readonly reach: 'found' | 'above' | 'below';
  readonly saved: number | null;
  readonly day: number;
  /** Null: it may hold or not. */
  readonly holds: boolean | null;
  readonly units: UnitChoice;
  /** Ends of 90 of 100, drawn as a band over the column. */
  readonly band?: Ends;
  /** The same before a run was seen, drawn below. */
  readonly before?: { readonly ceiling: number; readonly band: Ends };
}

export interface Ends {
  readonly low: number;
  readonly high: number;
}

const LOW = -20;
const HIGH = 80;
const W = 1000;
const STEPS = 5;

const percent = (x: number): string => `${x / 10}%`;
const at = (degC: number): number => (W * (Math.min(Math.max(degC, LOW), HIGH) - LOW)) / (HIGH - LOW);

/** One bar from -20 to 80 degC, ticked by round numbers of the unit it is read in; what it shows is also said in words beside it. */
export function Thermometer({ ceiling, reach, saved, day, holds, units, band, before }: Props) {
  const end = reach === 'above' ? W : reach === 'below' ? 0 : at(ceiling);
  const lower = before ? 20 : 0;
  const [low, high] = [inUnit(LOW, 'degC', units), inUnit(HIGH, 'degC', units)];
  const ticks = roundTicks(low, high, STEPS).map((value) => ({ value, share: (100 * (value - low)) / (high - low) }));
  return (
    <svg class={`bar ${holds === null ? 'unsure' : holds ? 'holds' : 'short'}`} width="100%" height={62 + lower} aria-hidden="true">
      <rect class="tube" x="0" y="14" width="100%" height="20" rx="10" />
      <rect class="column" x="0" y="14" width={percent(end)} height="20" rx="10" />
      {ticks.map(({ value, share }) => (
        <line key={value} class="tick" x1={`${share}%`} x2={`${share}%`} y1={34 + lower} y2={40 + lower} />
      ))}
      {ticks.map(({ value, share }) => (
        <text key={value} class="tick" x={`${share}%`} y={57 + lower} text-anchor={share < 3 ? 'start' : share > 97 ? 'end' : 'middle'}>
          {value}
        </text>
      ))}
      {band && <Band ends={band} y={24} kind="after" />}
      {before && <Band ends={before.band} y={44} kind="before" />}
      {before && <svg x={percent(at(before.ceiling))} y="44" overflow="visible"><path class="once" d="M0 -7V7" /></svg>}
      <svg x={percent(at(day))} y="24" overflow="visible"><path class="halo" d="M0 -13V13" /><path class="day" d="M0 -20V16" /><path class="flag" d="M0 -22 12 -17 0 -12Z" /></svg>
      <svg x={percent(end)} y="24" overflow="visible"><path class="halo" d="M0 -14V14" /><path class="now" d="M0 -13V13" /></svg>
      {saved !== null && <svg x={percent(at(saved))} y="24" overflow="visible"><path class="saved" d="M0 -14 9 0 0 14 -9 0Z" /></svg>}
    </svg>
  );
}

/** A band with a mark at each end that the scale still shows, and an arrow where it goes on beyond. */
function Band({ ends, y, kind }: { ends: Ends; y: number; kind: 'after' | 'before' }) {
  const [low, high] = [at(ends.low), at(ends.high)];
  const open = { low: ends.low <= LOW, high: ends.high >= HIGH };
  return (
    <g class={`band ${kind}`}>
      <line class="halo" x1={percent(low)} x2={percent(high)} y1={y} y2={y} />
      <line class="run" x1={percent(low)} x2={percent(high)} y1={y} y2={y} />
      <svg x={percent(low)} y={y} overflow="visible"><path class="end" d={open.low ? 'M8 -7 0 0 8 7' : 'M0 -8V8'} /></svg>
      <svg x={percent(high)} y={y} overflow="visible"><path class="end" d={open.high ? 'M-8 -7 0 0 -8 7' : 'M0 -8V8'} /></svg>
    </g>
  );
}
