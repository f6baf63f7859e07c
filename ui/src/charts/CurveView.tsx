import { useEffect, useRef, useState } from 'preact/hooks';
import type { Bound } from '../api/scheduleTypes';
import { demandAt, kept, type Point } from '../lib/curve';
import { roundTicks } from '../lib/ticks';
import { caught, grid, inUnit, withUnit, type Unit, type UnitChoice } from '../lib/units';

/** A value that moves along the axis, on a rail of its own below the curve. */
export interface Rail {
  readonly key: string;
  readonly title: string;
  readonly at: number;
  /** Where it may go. */
  readonly low: number;
  readonly high: number;
}

/** Another curve behind the one in the hand. */
export interface Ghost {
  readonly kind: 'sheet' | 'designed';
  readonly points: readonly Point[];
}

export interface Moved {
  readonly to: Point;
  /** Which of both has changed. */
  readonly x: boolean;
  readonly y: boolean;
}

interface Props {
  readonly label: string;
  readonly unit: Unit;
  readonly units: UnitChoice;
  readonly points: readonly Point[];
  readonly rails: readonly Rail[];
  readonly ghosts: readonly Ghost[];
  readonly bounds: readonly Bound[];
  readonly apart: number;
  readonly rises: boolean;
  readonly width: number;
  readonly movePoint: (at: number, moved: Moved, held: boolean) => void;
  readonly moveRail: (rail: Rail, to: number, held: boolean) => void;
  readonly drop: () => void;
  readonly cancel: () => void;
}

/** Half of what a gloved finger needs. */
const REACH = 24;
/** Less than this, in px, is a tap and no drag. */
const TAP = 5;
const LEFT = 66;
const RIGHT = 22;
const TOP = 30;
const TALL = 210;
const AXIS = 34;
const RAIL = 50;
/** Room for a number and its neighbour, in px. */
const TICK = 62;

type Handle = { readonly kind: 'point'; readonly at: number } | { readonly kind: 'rail'; readonly at: number };

interface Held {
  readonly pointer: number;
  readonly handle: Handle;
  /** Where it began, in the window: the page may move while a point is in the hand. */
  readonly x: number;
  readonly y: number;
  readonly start: Point;
  moving: boolean;
}

interface Paper {
  readonly low: number;
  readonly high: number;
}

function paperFor({ points, rails, ghosts, bounds }: Props): Paper {
  const all = [...points, ...ghosts.flatMap((g) => g.points)].map((p) => p.x).concat(rails.map((r) => r.at), bounds.map((b) => b.at));
  const low = Math.min(...all);
  const high = Math.max(...all);
  const edge = 0.06 * Math.max(high - low, 1e-3);
  return { low: low - edge, high: high + edge };
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1],
};

const same = (a: Handle, b: Handle | null): boolean => b !== null && a.kind === b.kind && a.at === b.at;

/** A demand curve whose points and switching values follow the hand and the arrow keys. */
export function CurveView(props: Props) {
  const { points, rails, unit, units, width } = props;
  const held = useRef<Held | null>(null);
  const fixed = useRef<Paper | null>(null);
  const [grabbing, setGrabbing] = useState(false);
  const [chosen, choose] = useState<Handle | null>(null);
  const svg = useRef<SVGSVGElement>(null);
  // While a point is in the hand the paper stays where it is.
  const paper = grabbing && fixed.current ? fixed.current : paperFor(props);
  fixed.current = paper;

  const across = Math.max(40, width - LEFT - RIGHT);
  const px = (x: number): number => LEFT + ((x - paper.low) / (paper.high - paper.low)) * across;
  const py = (y: number): number => TOP + (1 - y / 100) * TALL;
  const railY = (i: number): number => TOP + TALL + AXIS + (i + 0.5) * RAIL;
  const height = TOP + TALL + AXIS + rails.length * RAIL + 4;

  const spot = (handle: Handle): { x: number; y: number } => {
    if (handle.kind === 'rail') {
      return { x: px(rails[handle.at]?.at ?? paper.low), y: railY(handle.at) };
    }
    const point = points[handle.at] ?? { x: paper.low, y: 0 };
    return { x: px(point.x), y: py(point.y) };
  };
  const handles: readonly Handle[] = [
    ...points.map((_, at) => ({ kind: 'point' as const, at })),
    ...rails.map((_, at) => ({ kind: 'rail' as const, at })),
  ];
  const nearest = (x: number, y: number): Handle | undefined =>
    handles
      .map((handle) => ({ handle, dx: Math.abs(spot(handle).x - x), dy: Math.abs(spot(handle).y - y) }))
      .filter(({ dx, dy }) => dx <= REACH && dy <= REACH)
      .sort((a, b) => a.dx + a.dy - b.dx - b.dy)[0]?.handle;

  // touch-action does not reach into a drawing: a touch that begins on a point is kept from scrolling here.
  const keeps = useRef<(x: number, y: number) => boolean>(() => false);
  keeps.current = (x, y) => nearest(x, y) !== undefined;
  useEffect(() => {
    const element = svg.current;
    const start = (event: TouchEvent): void => {
      const area = element?.getBoundingClientRect();
      const touch = event.touches[0];
      if (area && touch && event.touches.length === 1 && keeps.current(touch.clientX - area.left, touch.clientY - area.top)) {
        event.preventDefault();
      }
    };
    element?.addEventListener('touchstart', start, { passive: false });
    return () => element?.removeEventListener('touchstart', start);
  }, []);

  const { cancel } = props;
  useEffect(() => {
    if (!grabbing) {
      return undefined;
    }
    const escape = (event: KeyboardEvent): void => {
      if (event.key === 'Escape') {
        held.current = null;
        setGrabbing(false);
        cancel();
      }
    };
    window.addEventListener('keydown', escape);
    return () => window.removeEventListener('keydown', escape);
  }, [grabbing]);

  /** A slight slant of a level drag moves nothing up or down. */
  const catching = (start: number, by: number, of: Unit, fine: boolean): number =>
    Math.abs(by) < grid(of, units, fine) / 2 ? start : caught(start + by, of, units, fine);

  const go = (handle: Handle, start: Point, dx: number, dy: number, fine: boolean, inHand: boolean): void => {
    if (handle.kind === 'rail') {
      const rail = rails[handle.at];
      if (rail) {
        const to = Math.min(Math.max(catching(start.x, dx, unit, fine), rail.low), rail.high);
        props.moveRail(rail, to, inHand);
      }
      return;
    }
    const wanted = { x: catching(start.x, dx, unit, fine), y: catching(start.y, dy, '%', fine) };
    const to = kept(points, handle.at, wanted, props.apart, props.rises);
    props.movePoint(handle.at, { to, x: to.x !== start.x, y: to.y !== start.y }, inHand);
  };

  const startOf = (handle: Handle): Point =>
    handle.kind === 'rail' ? { x: rails[handle.at]?.at ?? 0, y: 0 } : (points[handle.at] ?? { x: 0, y: 0 });

  const down = (event: PointerEvent): void => {
    const area = (event.currentTarget as SVGSVGElement).getBoundingClientRect();
    const handle = nearest(event.clientX - area.left, event.clientY - area.top);
    if (event.button !== 0 || held.current) {
      return;
    }
    choose(handle ?? null);
    if (handle) {
      held.current = { pointer: event.pointerId, handle, x: event.clientX, y: event.clientY, start: startOf(handle), moving: false };
      (event.currentTarget as SVGSVGElement).setPointerCapture(event.pointerId);
    }
  };

  const move = (event: PointerEvent): void => {
    const h = held.current;
    if (!h || h.pointer !== event.pointerId) {
      return;
    }
    const dx = event.clientX - h.x;
    const dy = h.y - event.clientY;
    if (!h.moving && Math.hypot(dx, dy) < TAP) {
      return;
    }
    if (!h.moving) {
      h.moving = true;
      setGrabbing(true);
    }
    go(h.handle, h.start, (dx / across) * (paper.high - paper.low), (100 * dy) / TALL, event.shiftKey, true);
  };

  const end = (event: PointerEvent, dropped: boolean): void => {
    const h = held.current;
    if (!h || h.pointer !== event.pointerId) {
      return;
    }
    held.current = null;
    setGrabbing(false);
    // The keys go on where the hand stopped.
    svg.current?.querySelector<SVGElement>(`[data-handle="${h.handle.kind} ${h.handle.at}"]`)?.focus({ preventScroll: true });
    if (h.moving) {
      if (dropped) {
        props.drop();
      } else {
        cancel();
      }
    }
  };

  const key = (handle: Handle) => (event: KeyboardEvent): void => {
    const arrow = ARROWS[event.key];
    if (!arrow || event.ctrlKey || event.metaKey || event.altKey || (handle.kind === 'rail' && arrow[0] === 0)) {
      return;
    }
    event.preventDefault();
    const by = (of: Unit): number => grid(of, units, event.shiftKey);
    go(handle, startOf(handle), arrow[0] * by(unit), arrow[1] * by('%'), event.shiftKey, false);
  };

  const drawn = (of: readonly Point[]): string => {
    const xs = [paper.low, ...of.map((p) => p.x), paper.high];
    return xs.map((x, i) => `${i === 0 ? 'M' : 'L'}${px(x).toFixed(1)} ${py(demandAt(of, x)).toFixed(1)}`).join('');
  };
  const ends = [inUnit(paper.low, unit, units), inUnit(paper.high, unit, units)] as const;
  const ticks = roundTicks(ends[0], ends[1], Math.max(2, Math.floor(across / TICK)));
  const tickX = (t: number): number => LEFT + ((t - ends[0]) / (ends[1] - ends[0])) * across;

  return (
    <svg
      ref={svg}
      viewBox={`0 0 ${width} ${height}`}
      class={grabbing ? 'curve grabbing' : 'curve'}
      width={width}
      height={height}
      role="group"
      aria-label={props.label}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={(event) => end(event, true)}
      onPointerCancel={(event) => end(event, false)}
    >
      <g aria-hidden="true">
        {[0, 50, 100].map((y) => (
          <g key={y}>
            <path class="grid" d={`M${LEFT} ${py(y)}H${LEFT + across}`} />
            <text class="tick" x={LEFT - 8} y={py(y) + 6} text-anchor="end">{y} %</text>
          </g>
        ))}
        {ticks.map((t) => (
          <g key={t}>
            <path class="grid" d={`M${tickX(t)} ${TOP}V${TOP + TALL}`} />
            <text class="tick" x={tickX(t)} y={TOP + TALL + 24} text-anchor="middle">{Number(t.toFixed(2))}</text>
          </g>
        ))}
        {props.bounds.map((bound) => <BoundLine key={bound.title} x={px(bound.at)} title={bound.title} left={px(bound.at) > LEFT + across / 2} />)}
        {props.ghosts.map((ghost) => <path key={ghost.kind} class={`ghost-curve ${ghost.kind}`} d={drawn(ghost.points)} />)}
        {points.length > 0 && <path class="now" d={drawn(points)} />}
        {rails.map((rail, i) => (
          <g key={rail.key} class="rail">
            <path class="grid" d={`M${LEFT} ${railY(i)}H${LEFT + across}`} />
            <path class="fall" d={`M${px(rail.at)} ${TOP}V${railY(i)}`} />
            <text x={px(rail.at) + (px(rail.at) > LEFT + across / 2 ? -18 : 18)} y={railY(i) + 6} text-anchor={px(rail.at) > LEFT + across / 2 ? 'end' : 'start'}>
              {rail.title} {withUnit(rail.at, unit, units)}
            </text>
          </g>
        ))}
      </g>
      {handles.map((handle) => {
        const { x, y } = spot(handle);
        const point = handle.kind === 'point' ? points[handle.at] : undefined;
        const rail = handle.kind === 'rail' ? rails[handle.at] : undefined;
        return (
          <g
            key={`${handle.kind} ${handle.at}`}
            class={`handle-of ${handle.kind}${same(handle, chosen) ? ' chosen' : ''}`}
            data-handle={`${handle.kind} ${handle.at}`}
            tabindex={0}
            role="button"
            aria-roledescription="can be moved"
            aria-label={point ? `Point ${handle.at + 1}: ${withUnit(point.y, '%', units)} at ${withUnit(point.x, unit, units)}` : `${rail?.title ?? ''} ${withUnit(rail?.at ?? 0, unit, units)}`}
            onKeyDown={key(handle)}
            onFocus={() => choose(handle)}
          >
            <rect class="grip" x={x - REACH} y={y - REACH} width={2 * REACH} height={2 * REACH} />
            {point ? <circle class="knob" cx={x} cy={y} r={9} /> : <path class="knob" d={`M${x} ${y - 11}L${x + 11} ${y}L${x} ${y + 11}L${x - 11} ${y}Z`} />}
          </g>
        );
      })}
      {grabbing && held.current?.handle.kind === 'point' && <Said point={points[held.current.handle.at]} unit={unit} units={units} {...spot(held.current.handle)} right={LEFT + across} />}
    </svg>
  );
}

function BoundLine({ x, title, left }: { x: number; title: string; left: boolean }) {
  return (
    <g class="bound">
      <path d={`M${x} ${TOP - 8}V${TOP + TALL}`} />
      <text x={x + (left ? 4 : -4)} y={TOP - 11} text-anchor={left ? 'end' : 'start'}>{title}</text>
    </g>
  );
}

/** What is in the hand, above it. */
function Said({ point, unit, units, x, y, right }: { point: Point | undefined; unit: Unit; units: UnitChoice; x: number; y: number; right: number }) {
  if (!point) {
    return null;
  }
  const end = x > (LEFT + right) / 2;
  return (
    <text class="said-at" aria-hidden="true" x={end ? x - 16 : x + 16} y={y + (y < TOP + 40 ? 34 : -16)} text-anchor={end ? 'end' : 'start'}>
      {withUnit(point.x, unit, units)}, {withUnit(point.y, '%', units)}
    </text>
  );
}
