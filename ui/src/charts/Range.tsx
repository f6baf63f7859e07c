import type { Ends } from './Thermometer';

interface Drawn extends Ends {
  readonly value: number;
}

interface Props {
  readonly before: Drawn;
  readonly after: Drawn;
}

/** Wider apart than this by their ratio, values that cannot be negative are drawn by their ratio. */
const BY_RATIO = 4;

/** Before above and dashed, after below and solid; the numbers stand beside it in words. */
export function Range({ before, after }: Props) {
  const low = Math.min(before.low, after.low);
  const high = Math.max(before.high, after.high);
  const ratio = low > 0 && high / low > BY_RATIO;
  const scale = ratio ? Math.log : (v: number): number => v;
  const room = scale(high) - scale(low);
  const at = (v: number): string => `${room > 0 ? 3 + (94 * (scale(v) - scale(low))) / room : 50}%`;
  return (
    <svg class="bar ranges" width="100%" height="42" aria-hidden="true">
      <One drawn={before} y={12} kind="before" at={at} />
      <One drawn={after} y={30} kind="after" at={at} />
    </svg>
  );
}

function One({ drawn, y, kind, at }: { drawn: Drawn; y: number; kind: string; at: (v: number) => string }) {
  return (
    <g class={`band ${kind}`}>
      <line class="run" x1={at(drawn.low)} x2={at(drawn.high)} y1={y} y2={y} />
      {[drawn.low, drawn.high].map((end) => <line key={end} class="end" x1={at(end)} x2={at(end)} y1={y - 7} y2={y + 7} />)}
      <svg x={at(drawn.value)} y={y} overflow="visible"><path class="best" d="M0 -7 7 0 0 7 -7 0Z" /></svg>
    </g>
  );
}
