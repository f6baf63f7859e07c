import { useEffect, useRef, useState } from 'preact/hooks';
import type { Stack } from '../api/types';
import type { Changes } from '../lib/history';
import { changesTo, layerName, partsOf, type Part } from '../lib/parts';
import { step, withUnit, type UnitChoice } from '../lib/units';
import { boxOf, type Box, type Frame } from './frame';
import { boundsOf, holdsOf, movable, moved, type Hold } from './grab';
import { labels, LINE_HEIGHT, type Words } from './labels';

interface Props {
  readonly stack: Stack;
  readonly ghost: Stack | null;
  readonly frame: Frame;
  readonly width: number;
  readonly height: number;
  readonly units: UnitChoice;
  readonly chosen: string | null;
  readonly choose: (id: string | null) => void;
  readonly drag: (changes: Changes) => void;
  readonly drop: () => void;
  readonly cancel: () => void;
  readonly nudge: (changes: Changes, move: string) => void;
}

/** Half of what a gloved finger needs. */
const REACH = 24;
/** Less than this, in px, is a tap and no drag. */
const TAP = 5;
/** Below this many px an edge has no handle of its own, only its corners have. */
const ROOM_FOR_EDGES = 150;

interface Held {
  readonly pointer: number;
  readonly part: Part;
  readonly hold: Hold;
  /** Where it began, in the window: the page may move while a part is in the hand. */
  readonly x: number;
  readonly y: number;
  readonly under: readonly string[];
  readonly was: boolean;
  moving: boolean;
}

const spot = (box: Box, hold: Hold): { x: number; y: number } => ({
  x: box.x + (box.w * (hold.x + 1)) / 2,
  y: box.y + (box.h * (1 - hold.y)) / 2,
});

const inside = (box: Box, x: number, y: number, by: number): boolean =>
  x >= box.x - by && x <= box.x + box.w + by && y >= box.y - by && y <= box.y + box.h + by;

/** Openings and shroud are taken by their frame, cores anywhere. */
function hit(part: Part, box: Box, x: number, y: number): boolean {
  if (part.kind === 'core') {
    return inside(box, x, y, 0);
  }
  const rim = part.kind === 'opening' ? 8 : 6;
  return inside(box, x, y, rim) && !inside(box, x, y, -rim);
}

/** The chosen part lies on top for the finger, and is never thinner than one. */
function Grip({ box, free }: { box: Box; free: boolean }) {
  const w = Math.max(2 * REACH, box.w);
  const h = Math.max(2 * REACH, box.h);
  const x = box.x + (box.w - w) / 2;
  const y = box.y + (box.h - h) / 2;
  return <rect class={free ? 'around free' : 'around'} x={x} y={y} width={w} height={h} />;
}

/** Inside the grip of a part. */
const gripped = (box: Box, x: number, y: number): boolean =>
  Math.abs(x - box.x - box.w / 2) <= Math.max(REACH, box.w / 2) && Math.abs(y - box.y - box.h / 2) <= Math.max(REACH, box.h / 2);

/** From the most that can be said of a core to its number alone; a core that is not seen is said to be behind. */
function wordsFor(number: string, title: string, speed: string, warm: string): readonly Words[] {
  const name = `${number} ${title}`;
  const seen = [
    [name, `${speed}, ${warm}`],
    [`${name} ${speed}, ${warm}`],
    [name, speed, warm],
    [...name.replace(' ', '\u00a0').split(' '), speed, warm],
    [name],
    [number],
  ];
  const behind = [[`behind: ${name}`, `${speed}, ${warm}`], [`behind: ${number}`], [number]];
  return [...seen.map((lines) => ({ lines, behind: false })), ...behind.map((lines) => ({ lines, behind: true }))];
}

const holds = (part: Part, box: Box): readonly Hold[] => holdsOf(part, Math.min(box.w, box.h) >= ROOM_FOR_EDGES);

function said(part: Part, units: UnitChoice): string {
  const at = (mm: number): string => withUnit(mm, 'mm', units);
  const place = `${at(part.width_mm)} wide, ${at(part.height_mm)} high, ${at(part.left_mm)} from the left, ${at(part.bottom_mm)} from the bottom`;
  const air = part.core
    ? `, ${layerName(part.core)}, air ${withUnit(part.core.air_speed_m_s, 'm/s', units)} at ${withUnit(part.core.air_degC, 'degC', units)}`
    : '';
  return `${part.title}: ${place}${air}`;
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1],
};

export function FrontView(props: Props) {
  const { stack, frame, units, chosen } = props;
  const held = useRef<Held | null>(null);
  const [grabbing, setGrabbing] = useState(false);
  const parts = partsOf(stack);
  const box = (part: Part): Box => boxOf(part, frame);
  const active = parts.find((part) => part.id === chosen) ?? null;

  const at = (event: PointerEvent): { x: number; y: number } => {
    const area = (event.currentTarget as SVGSVGElement).getBoundingClientRect();
    return { x: event.clientX - area.left, y: event.clientY - area.top };
  };

  const handleAt = (x: number, y: number): Hold | null => {
    if (!active) {
      return null;
    }
    const near = holds(active, box(active))
      .map((hold) => ({ hold, from: spot(box(active), hold) }))
      .map(({ hold, from }) => ({ hold, dx: Math.abs(from.x - x), dy: Math.abs(from.y - y) }))
      .filter(({ dx, dy }) => dx <= REACH && dy <= REACH)
      .sort((a, b) => a.dx + a.dy - b.dx - b.dy);
    return near[0]?.hold ?? null;
  };

  // touch-action does not reach into a drawing: a touch that begins on the chosen part is kept from scrolling here.
  const paper = useRef<SVGSVGElement>(null);
  const keeps = useRef<(x: number, y: number) => boolean>(() => false);
  keeps.current = (x, y) => active !== null && (handleAt(x, y) !== null || gripped(box(active), x, y));
  useEffect(() => {
    const svg = paper.current;
    const start = (event: TouchEvent): void => {
      const area = svg?.getBoundingClientRect();
      const touch = event.touches[0];
      if (area && touch && event.touches.length === 1 && keeps.current(touch.clientX - area.left, touch.clientY - area.top)) {
        event.preventDefault();
      }
    };
    svg?.addEventListener('touchstart', start, { passive: false });
    return () => svg?.removeEventListener('touchstart', start);
  }, []);

  const focus = (id: string): void => {
    paper.current?.querySelector<SVGElement>(`[data-part="${id}"]`)?.focus({ preventScroll: true });
  };

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

  const down = (event: PointerEvent): void => {
    if (event.button !== 0 || held.current) {
      return;
    }
    const { x, y } = at(event);
    // Openings lie before the cores and the shroud behind them, but their frames are thin: they are asked first.
    const under = [...parts.filter((p) => p.kind !== 'core'), ...parts.filter((p) => p.kind === 'core')]
      .filter((part) => hit(part, box(part), x, y));
    const hold = handleAt(x, y);
    const again = active !== null && (hold !== null || gripped(box(active), x, y) || under.includes(active));
    const part = again ? active : under[0];
    if (!part) {
      props.choose(null);
      return;
    }
    const names = under.map((p) => p.id);
    held.current = { pointer: event.pointerId, part, hold: hold ?? { x: 0, y: 0 }, x: event.clientX, y: event.clientY, under: names, was: again, moving: false };
    if (!again) {
      props.choose(part.id);
    }
    // A finger first chooses, then moves: a swipe over the drawing scrolls the page.
    if (again || event.pointerType === 'mouse') {
      (event.currentTarget as SVGSVGElement).setPointerCapture(event.pointerId);
    }
  };

  const move = (event: PointerEvent): void => {
    const h = held.current;
    if (!h || h.pointer !== event.pointerId || (!h.was && event.pointerType !== 'mouse')) {
      return;
    }
    const { clientX: x, clientY: y } = event;
    if (!h.moving && Math.hypot(x - h.x, y - h.y) < TAP) {
      return;
    }
    if (!h.moving) {
      h.moving = true;
      setGrabbing(true);
    }
    const grid = step(units, event.shiftKey);
    const to = moved(h.part, h.hold, (x - h.x) / frame.scale, (h.y - y) / frame.scale, grid, boundsOf(h.part, h.hold, stack));
    props.drag(changesTo(h.part, to, units));
  };

  const up = (event: PointerEvent): void => {
    const h = held.current;
    if (!h || h.pointer !== event.pointerId) {
      return;
    }
    held.current = null;
    setGrabbing(false);
    // The keys go on where the hand stopped.
    focus(h.part.id);
    if (h.moving) {
      props.drop();
    } else if (h.was) {
      const next = h.under[(h.under.indexOf(h.part.id) + 1) % Math.max(1, h.under.length)];
      props.choose(next ?? h.part.id);
      focus(next ?? h.part.id);
    }
  };

  const lost = (event: PointerEvent): void => {
    if (held.current?.pointer === event.pointerId) {
      const { moving } = held.current;
      held.current = null;
      setGrabbing(false);
      if (moving) {
        cancel();
      }
    }
  };

  const key = (part: Part) => (event: KeyboardEvent): void => {
    const arrow = ARROWS[event.key];
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      props.choose(part.id);
      return;
    }
    if (!arrow || event.ctrlKey || event.metaKey) {
      return;
    }
    event.preventDefault();
    const by = step(units, event.shiftKey);
    const hold: Hold = event.altKey ? { x: arrow[0] === 0 ? 0 : 1, y: arrow[1] === 0 ? 0 : 1 } : { x: 0, y: 0 };
    const to = moved(part, hold, arrow[0] * by, arrow[1] * by, 0, boundsOf(part, hold, stack));
    props.nudge(changesTo(part, to, units), `${part.id} ${event.altKey ? 'size' : 'place'}`);
  };

  const cores = parts.filter((part) => part.kind === 'core');
  const words = labels(
    cores.map(box),
    cores.map((part, i) => {
      const speed = withUnit(part.core?.air_speed_m_s ?? 0, 'm/s', units);
      const warm = withUnit(part.core?.air_degC ?? 0, 'degC', units);
      return wordsFor(`${i + 1}`, part.title, speed, warm);
    }),
  );
  const face = boxOf({ left_mm: 0, bottom_mm: 0, width_mm: stack.width_mm, height_mm: stack.height_mm }, frame);

  return (
    <svg
      ref={paper}
      viewBox={`0 0 ${props.width} ${props.height}`}
      class={grabbing ? 'front grabbing' : 'front'}
      width={props.width}
      height={props.height}
      role="group"
      aria-label="Front view of the stack, to scale"
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={lost}
    >
      <Hatches />
      <rect class="face" x={face.x} y={face.y} width={face.w} height={face.h} />
      {[...cores].reverse().map((part) => (
        <Shape key={part.id} part={part} box={box(part)} chosen={part.id === chosen} />
      ))}
      <g aria-hidden="true">
        {cores.map((part) => {
          const b = box(part);
          return <rect key={part.id} class="covered" x={b.x} y={b.y} width={b.w} height={b.h} />;
        })}
        <Fans stack={stack} frame={frame} />
      </g>
      {parts.filter((p) => p.kind !== 'core').map((part) => (
        <Shape key={part.id} part={part} box={box(part)} chosen={part.id === chosen} />
      ))}
      {props.ghost && <Ghosts stack={props.ghost} frame={frame} />}
      <g aria-hidden="true" class="words">
        {words.map((label, i) =>
          label.lines.map((line, n) => (
            <text key={`${i} ${n}`} class={n === 0 ? 'name' : ''} x={label.x} y={label.y + n * LINE_HEIGHT}>{line}</text>
          )),
        )}
        <Sizes stack={stack} face={face} units={units} />
      </g>
      {parts.map((part) => {
        const b = box(part);
        return (
          <rect
            key={part.id}
            class={part.id === chosen ? 'reach chosen' : 'reach'}
            x={b.x} y={b.y} width={Math.max(1, b.w)} height={Math.max(1, b.h)}
            data-part={part.id}
            tabindex={0}
            role="button"
            aria-pressed={part.id === chosen}
            aria-roledescription={movable(part) ? 'part, can be moved' : 'part'}
            aria-describedby="moving"
            aria-label={said(part, units)}
            onKeyDown={key(part)}
            onFocus={(event) => {
              if ((event.currentTarget as Element).matches(':focus-visible')) {
                props.choose(part.id);
              }
            }}
          />
        );
      })}
      {active && (
        <g aria-hidden="true" class="handles">
          <Grip box={box(active)} free={movable(active)} />
          {holds(active, box(active)).map((hold) => {
            const { x, y } = spot(box(active), hold);
            const turned = hold.x !== 0 && hold.y !== 0 ? (hold.x === hold.y ? 'rising' : 'falling') : hold.x !== 0 ? 'across' : 'upright';
            return (
              <g key={`${hold.x} ${hold.y}`} class={turned}>
                <rect class="around" x={x - REACH} y={y - REACH} width={2 * REACH} height={2 * REACH} />
                <rect class="handle" x={x - 7} y={y - 7} width={14} height={14} />
              </g>
            );
          })}
        </g>
      )}
    </svg>
  );
}

function Shape({ part, box, chosen }: { part: Part; box: Box; chosen: boolean }) {
  const at = { x: box.x, y: box.y, width: Math.max(1, box.w), height: Math.max(1, box.h) };
  const kind = `${part.kind}${chosen ? ' chosen' : ''}`;
  return (
    <g aria-hidden="true">
      {part.kind === 'core' && <rect class="under" {...at} />}
      <rect class={kind} {...at} fill={part.kind === 'core' ? `url(#hatch-${hatchOf(part.id)})` : 'none'} />
      {part.kind === 'opening' && <rect class="inner" x={box.x + 5} y={box.y + 5} width={Math.max(1, box.w - 10)} height={Math.max(1, box.h - 10)} />}
    </g>
  );
}

const HATCHED = ['gearbox-cooler', 'condenser', 'charge-air-cooler'];
const hatchOf = (id: string): string => (HATCHED.includes(id) ? id : 'radiator');

/** Each kind of core has its own fins, so that none is known by colour alone. */
export function Hatches() {
  return (
    <defs>
      <pattern id="hatch-radiator" width="9" height="9" patternUnits="userSpaceOnUse"><path class="hatch" d="M4.500 0v9" /></pattern>
      <pattern id="hatch-condenser" width="9" height="9" patternUnits="userSpaceOnUse"><path class="hatch" d="M0 4.500h9" /></pattern>
      <pattern id="hatch-gearbox-cooler" width="9" height="9" patternUnits="userSpaceOnUse"><path class="hatch" d="M-1 10 10 -1" /></pattern>
      <pattern id="hatch-charge-air-cooler" width="9" height="9" patternUnits="userSpaceOnUse"><path class="hatch" d="M0 4.500h9M4.500 0v9" /></pattern>
    </defs>
  );
}

function Ghosts({ stack, frame }: { stack: Stack; frame: Frame }) {
  return (
    <g aria-hidden="true">
      {partsOf(stack).map((part) => {
        const b = boxOf(part, frame);
        return <rect key={part.id} class="ghost" x={b.x} y={b.y} width={Math.max(1, b.w)} height={Math.max(1, b.h)} />;
      })}
    </g>
  );
}

function Fans({ stack, frame }: { stack: Stack; frame: Frame }) {
  const b = boxOf(stack.shroud, frame);
  const r = (stack.fan_diameter_mm * frame.scale) / 2;
  return (
    <>
      {Array.from({ length: stack.fans }, (_, i) => {
        const x = b.x + (b.w * (2 * i + 1)) / (2 * stack.fans);
        const y = b.y + b.h / 2;
        return (
          <g key={i} class="fan">
            <circle cx={x} cy={y} r={r} />
            <circle cx={x} cy={y} r={r * 0.22} />
          </g>
        );
      })}
    </>
  );
}

function Sizes({ stack, face, units }: { stack: Stack; face: Box; units: UnitChoice }) {
  const y = face.y + face.h + 26;
  return (
    <>
      <path class="size" d={`M${face.x} ${y - 14}v9M${face.x + face.w} ${y - 14}v9M${face.x} ${y - 10}h${face.w}`} />
      <text x={face.x + face.w / 2} y={y + 9} text-anchor="middle">
        {`face ${withUnit(stack.width_mm, 'mm', units)} wide, ${withUnit(stack.height_mm, 'mm', units)} high`}
      </text>
    </>
  );
}
