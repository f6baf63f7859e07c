import type { Core, Stack } from '../api/types';
import { layerName, layersOf, partsOf } from '../lib/parts';
import { withUnit, type UnitChoice } from '../lib/units';
import type { Frame } from './frame';

interface Props {
  readonly stack: Stack;
  readonly ghost: Stack | null;
  readonly frame: Frame;
  readonly width: number;
  readonly height: number;
  readonly units: UnitChoice;
  readonly chosen: string | null;
  readonly choose: (id: string) => void;
  readonly reorder: (id: string, way: -1 | 1) => void;
}

/** Drawn between the layers, in px, so that they can be told apart. */
const GAP = 24;
const FRONT = 46;

interface Drawn {
  readonly core: Core;
  readonly x: number;
  readonly w: number;
}

function drawn(stack: Stack, scale: number): { readonly cores: readonly Drawn[]; readonly end: number } {
  let x = FRONT;
  const cores: Drawn[] = [];
  for (const layer of layersOf(stack)) {
    const deepest = Math.max(...layer.map((core) => core.depth_mm)) * scale;
    cores.push(...layer.map((core) => ({ core, x, w: core.depth_mm * scale })));
    x += deepest + GAP;
  }
  return { cores, end: x };
}

/** Width in px that the side view needs. */
export const sideWidth = (stack: Stack, scale: number): number => drawn(stack, scale).end + 52;

export function SideView(props: Props) {
  const { stack, frame, units } = props;
  const { cores, end } = drawn(stack, frame.scale);
  // In an order that stays when layers change: a shape that is moved in the page loses the focus.
  const byName = [...cores].sort((a, b) => a.core.id.localeCompare(b.core.id));
  const y = (bottom: number, height: number): number => frame.top + (frame.height_mm - bottom - height) * frame.scale;
  const numbers = new Map(partsOf(stack).map((part, i) => [part.id, i + 1]));
  const { shroud } = stack;
  const top = y(shroud.bottom_mm, shroud.height_mm);
  const low = y(shroud.bottom_mm, 0);
  const middle = (top + low) / 2;
  const r = (stack.fan_diameter_mm * frame.scale) / 2;
  const ghosts = props.ghost === null ? [] : drawn(props.ghost, frame.scale).cores;

  return (
    <svg class="side" viewBox={`0 0 ${props.width} ${props.height}`} width={props.width} height={props.height} role="group" aria-label="Side view, front of the car on the left">
      <g aria-hidden="true">
        <path class="face" d={`M${FRONT - 18} ${y(0, stack.height_mm)}V${y(0, 0)}`} />
        {stack.openings.map((o) => (
          <path key={o.id} class="hole" d={`M${FRONT - 18} ${y(o.bottom_mm, o.height_mm)}v${o.height_mm * frame.scale}`} />
        ))}
        {stack.openings.map((o) => {
          const at = y(o.bottom_mm, o.height_mm / 2);
          return <path key={o.id} class="air" d={`M2 ${at}h20m-7 -6 7 6 -7 6`} />;
        })}
        <path class="shroud" d={`M${end - GAP + 6} ${top}L${end + 14} ${middle - r}M${end - GAP + 6} ${low}L${end + 14} ${middle + r}`} />
        <rect class="fan" x={end + 14} y={middle - r} width={8} height={2 * r} />
        <path class="air" d={`M${end + 28} ${middle}h20m-7 -6 7 6 -7 6`} />
        {ghosts.map(({ core, x, w }) => (
          <rect key={core.id} class="ghost" x={x} y={y(core.bottom_mm, core.height_mm)} width={w} height={core.height_mm * frame.scale} />
        ))}
      </g>
      {byName.map(({ core, x, w }) => {
        const at = { x, y: y(core.bottom_mm, core.height_mm), width: w, height: core.height_mm * frame.scale };
        return (
          <g key={core.id}>
            <rect class={`core layer${core.id === props.chosen ? ' chosen' : ''}`} {...at} />
            <rect
              class="reach"
              x={x + w / 2 - Math.max(24, w / 2)} y={at.y} width={Math.max(48, w)} height={at.height}
              tabindex={0}
              role="button"
              aria-pressed={core.id === props.chosen}
              aria-label={`${core.title}: ${layerName(core)} from the front, ${withUnit(core.depth_mm, 'mm', units)} deep`}
              aria-describedby="ordering"
              onClick={() => props.choose(core.id)}
              onKeyDown={(event) => {
                const way = event.key === 'ArrowLeft' ? -1 : event.key === 'ArrowRight' ? 1 : 0;
                if (way !== 0) {
                  event.preventDefault();
                  props.reorder(core.id, way);
                } else if (event.key === 'Enter' || event.key === ' ') {
                  event.preventDefault();
                  props.choose(core.id);
                }
              }}
            />
            <text class="number" aria-hidden="true" x={x + w / 2} y={at.y - 6} text-anchor="middle">{numbers.get(core.id)}</text>
          </g>
        );
      })}
      <text aria-hidden="true" class="words" x={props.width / 2} y={frame.top + frame.height_mm * frame.scale + 35} text-anchor="middle">
        from the side
      </text>
    </svg>
  );
}
