import { inUnit, type UnitChoice } from '../lib/units';

interface Props {
  readonly ceiling: number;
  readonly reach: 'found' | 'above' | 'below';
  readonly saved: number | null;
  readonly day: number;
  readonly holds: boolean;
  readonly units: UnitChoice;
}

const LOW = -20;
const HIGH = 80;
const W = 1000;
const TICKS = [-20, 0, 20, 40, 60, 80];

const at = (degC: number): number => (W * (Math.min(Math.max(degC, LOW), HIGH) - LOW)) / (HIGH - LOW);

/** One bar from -20 to 80 degC; what it shows is also said in words beside it. */
export function Thermometer({ ceiling, reach, saved, day, holds, units }: Props) {
  const end = reach === 'above' ? W : reach === 'below' ? 0 : at(ceiling);
  const percent = (x: number): string => `${x / 10}%`;
  return (
    <svg class={holds ? 'bar holds' : 'bar short'} width="100%" height="62" aria-hidden="true">
      <rect class="tube" x="0" y="14" width="100%" height="20" rx="10" />
      <rect class="column" x="0" y="14" width={percent(end)} height="20" rx="10" />
      {TICKS.map((t) => (
        <line key={t} class="tick" x1={percent(at(t))} x2={percent(at(t))} y1="34" y2="40" />
      ))}
      {TICKS.map((t) => (
        <text key={t} class="tick" x={percent(at(t))} y="57" text-anchor={t === LOW ? 'start' : t === HIGH ? 'end' : 'middle'}>
          {Math.round(inUnit(t, 'degC', units))}
        </text>
      ))}
      <svg x={percent(at(day))} y="24" overflow="visible"><path class="halo" d="M0 -13V13" /><path class="day" d="M0 -20V16" /><path class="flag" d="M0 -22 12 -17 0 -12Z" /></svg>
      <svg x={percent(end)} y="24" overflow="visible"><path class="halo" d="M0 -14V14" /><path class="now" d="M0 -13V13" /></svg>
      {saved !== null && <svg x={percent(at(saved))} y="24" overflow="visible"><path class="saved" d="M0 -14 9 0 0 14 -9 0Z" /></svg>}
    </svg>
  );
}
