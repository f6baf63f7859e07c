import { effect, type Signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import uPlot from 'uplot';
import { drawable, type Pyramid } from '../lib/pyramid';
import { eventMark } from '../lib/said';
import { clock, keyed, type Span } from '../lib/span';
import { inUnit, isKnown, type UnitChoice } from '../lib/units';
import { shownTheme } from '../state/settings';
import { useWidth } from './frame';
import { holdBy } from './hand';

/** Told apart by dash and width as well as by colour. */
export interface Stroke {
  /** A colour of the page by its name, as in --ink. */
  readonly colour: string;
  readonly dash: readonly number[];
  readonly width: number;
}

export interface Line {
  readonly name: string;
  readonly line: Pyramid;
  readonly stroke: Stroke;
}

/** A stretch of time and a time pointed at, the same for all plots that stand below each other. */
export interface Time {
  readonly whole: Signal<Span>;
  readonly span: Signal<Span>;
  readonly pointed: Signal<number | null>;
}

export interface Mark {
  readonly time_s: number;
  readonly kind: string;
}

interface Props {
  readonly label: string;
  readonly time_s: Float64Array;
  readonly lines: readonly Line[];
  /** Places of the upper and the lower line between which the ground is tinted. */
  readonly band?: readonly [number, number];
  readonly marks?: readonly Mark[];
  readonly unit: string;
  readonly units: UnitChoice;
  readonly time: Time;
  readonly height: number;
}

const FONT = 17;
/** Points drawn for each pixel of width: least and greatest. */
const PER_PIXEL = 2;
const STEPS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1200, 1800, 3600, 7200, 14400, 28800, 86400];

const colour = (name: string): string => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

function stamps(splits: readonly number[]): string[] {
  const step = (splits[1] ?? 1) - (splits[0] ?? 0);
  return splits.map((t) => clock(t, step < 1 ? 1 : 0));
}

function axes(): uPlot.Axis[] {
  const font = `${FONT}px ${getComputedStyle(document.body).fontFamily}`;
  const common: uPlot.Axis = {
    font,
    stroke: () => colour('--ink'),
    grid: { stroke: () => colour('--faint'), width: 1 },
    ticks: { stroke: () => colour('--line'), width: 1, size: 6 },
  };
  return [
    { ...common, incrs: STEPS, space: 96, size: 34, gap: 4, values: (_, splits) => stamps(splits) },
    { ...common, space: 36, size: 66, gap: 4 },
  ];
}

/** On and open are filled, off and closed hollow; letters where there is room for them. */
function drawMarks(u: uPlot, marks: readonly Mark[], span: Span): void {
  const { ctx } = u;
  const px = devicePixelRatio;
  ctx.save();
  ctx.lineWidth = 1.5 * px;
  ctx.font = `bold ${FONT * px}px ${getComputedStyle(document.body).fontFamily}`;
  ctx.textAlign = 'left';
  ctx.strokeStyle = ctx.fillStyle = colour('--day');
  let written = -Infinity;
  for (const mark of marks.filter((m) => m.time_s >= span.from && m.time_s <= span.to)) {
    const x = u.valToPos(mark.time_s, 'x', true);
    const { top, height } = u.bbox;
    const { letter, filled } = eventMark(mark.kind);
    ctx.setLineDash([2 * px, 5 * px]);
    ctx.beginPath();
    ctx.moveTo(x, top);
    ctx.lineTo(x, top + height);
    ctx.stroke();
    ctx.setLineDash([]);
    ctx.beginPath();
    ctx.moveTo(x - 6 * px, top);
    ctx.lineTo(x + 6 * px, top);
    ctx.lineTo(x, top + 10 * px);
    ctx.closePath();
    if (filled) {
      ctx.fill();
    } else {
      ctx.stroke();
    }
    if (x - written > 22 * px) {
      ctx.fillText(letter, x + 4 * px, top + 26 * px);
      written = x;
    }
  }
  ctx.restore();
}

/** Lines over time. Dragged, pinched and turned by keys; however many samples, only what the width can show is drawn. */
export function Plot(props: Props) {
  const [frame, width] = useWidth();
  const plot = useRef<uPlot | null>(null);
  const wide = width > 0;
  const { time_s, lines, unit, units, time, height, marks, band } = props;

  useEffect(() => {
    const element = frame.current;
    if (!element || !wide) {
      return undefined;
    }
    const convert = isKnown(unit) ? (v: number | null) => (v === null ? null : inUnit(v, unit, units)) : (v: number | null) => v;
    const u = new uPlot(
      {
        width: element.clientWidth,
        height,
        legend: { show: false },
        padding: [14, 12, 0, 0],
        scales: { x: { time: false } },
        cursor: { drag: { x: false, y: false }, y: false, points: { show: false } },
        axes: axes(),
        series: [
          {},
          ...lines.map(({ stroke }): uPlot.Series => ({
            stroke: () => colour(stroke.colour),
            width: stroke.width,
            dash: [...stroke.dash],
            points: { show: false },
            spanGaps: false,
          })),
        ],
        ...(band ? { bands: [{ series: [band[0] + 1, band[1] + 1] as [number, number], fill: () => colour('--tint') }] } : {}),
        hooks: {
          draw: [(self) => marks && drawMarks(self, marks, time.span.peek())],
          setCursor: [(self) => {
            const left = self.cursor.left ?? -1;
            time.pointed.value = left < 0 ? null : self.posToVal(left, 'x');
          }],
        },
      },
      [[], ...lines.map(() => [])],
      element,
    );
    plot.current = u;
    const release = holdBy(u.over, time);
    const drawn = effect(() => {
      const { from, to } = time.span.value;
      const shown = drawable(time_s, lines.map((l) => l.line), from, to, PER_PIXEL * element.clientWidth * devicePixelRatio);
      u.batch(() => {
        u.setData([shown.time_s as number[], ...shown.lines.map((line) => line.map(convert))], true);
        u.setScale('x', { min: from, max: to });
      });
      element.dataset['samples'] = String(time_s.length);
    });
    // In all plots at the time pointed at in one of them, and there it stays while they are moved by keys.
    const pointing = effect(() => {
      const { from, to } = time.span.value;
      const at = time.pointed.value;
      const share = at === null ? -1 : (at - from) / (to - from);
      u.setCursor({ left: share < 0 || share > 1 ? -10 : share * u.over.clientWidth, top: 1 }, false);
    });
    const coloured = effect(() => {
      shownTheme.value;
      u.redraw(false);
    });
    return () => {
      coloured();
      pointing();
      drawn();
      release();
      u.destroy();
      plot.current = null;
    };
  }, [wide, height, time_s, lines, unit, units, time, marks, band]);

  useEffect(() => {
    if (plot.current && width > 0) {
      plot.current.setSize({ width, height });
    }
  }, [width, height]);

  return (
    <div
      class="plot" ref={frame} style={{ minHeight: `${height}px` }} tabIndex={0} role="group" aria-label={props.label} aria-describedby="plot-keys"
      onKeyDown={(event) => {
        if (pressed(event, time)) {
          event.preventDefault();
        }
      }}
    />
  );
}

/** Shift and an arrow move the time pointed at, in all plots that share it; other keys the stretch that is shown. */
function pressed(event: KeyboardEvent, time: Time): boolean {
  if (event.ctrlKey || event.metaKey || event.altKey) {
    return false;
  }
  const span = time.span.peek();
  const way = event.key === 'ArrowLeft' ? -1 : event.key === 'ArrowRight' ? 1 : 0;
  if (event.shiftKey && way !== 0) {
    const at = (time.pointed.peek() ?? (span.from + span.to) / 2) + (way * (span.to - span.from)) / 100;
    time.pointed.value = Math.min(Math.max(at, span.from), span.to);
    return true;
  }
  const next = keyed(event.key, span, time.whole.peek());
  if (next) {
    time.span.value = next;
  }
  return next !== null;
}
