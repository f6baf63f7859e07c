import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { FitTrace, ProofKept, SeenEvent } from '../../api/proofTypes';
import { Plot, type Line, type Mark, type Stroke } from '../../charts/Plot';
import { nearest, Pyramid } from '../../lib/pyramid';
import { eventName } from '../../lib/said';
import { clock, CLOSER, inside, panned, zoomed, type Span } from '../../lib/span';
import { anyUnit, change, unitName } from '../../lib/units';
import type { ProofDesk } from '../../state/proofDesk';
import { runs } from '../../state/runs';
import { units } from '../../state/settings';
import { TraceDesk, type Recorded } from '../../state/traceDesk';
import { Table } from '../Table';
import { TroubleNotice } from '../TroubleNotice';

const MEASURED: Stroke = { colour: '--ink', dash: [], width: 1.5 };
const FITTED: Stroke = { colour: '--main', dash: [10, 5], width: 2.5 };
const EDGE: Stroke = { colour: '--main', dash: [2, 4], width: 1.5 };
const RAW: Stroke = { colour: '--ink', dash: [], width: 1.5 };

/** Drawn at once where there is no fit to look at yet. */
const FIRST = ['coolant_temperature'];

/** Recordings over time: as fitted where they were, and every channel as recorded. */
export function Traces({ desk, kept }: { desk: ProofDesk; kept: ProofKept | null }) {
  const wanted = useSignal<string | null>(null);
  const drawn = kept?.traces.map((t) => t.run) ?? [];
  const read = (runs.value ?? []).filter((r) => r.map !== 'none').map((r) => r.name);
  const names = [...drawn, ...read.filter((name) => !drawn.includes(name))];
  const mine = names.find((name) => name === wanted.value) ?? names.find((name) => drawn.includes(name) || desk.roles.value[name] !== 'none') ?? names[0];
  if (mine === undefined) {
    return null;
  }
  // Read anew where the recording or its map is another.
  const version = runs.value?.find((r) => r.name === mine)?.version ?? '';
  return (
    <section class="card traces" aria-labelledby="traces-title">
      <div class="values-head">
        <h2 id="traces-title">Traces</h2>
        <label class="search">
          <span>Recording</span>
          <select value={mine} onChange={(e) => { wanted.value = e.currentTarget.value; }}>
            {names.map((name) => <option key={name} value={name}>{name}</option>)}
          </select>
        </label>
      </div>
      <OneRun key={`${mine} ${kept?.pdf ?? ''} ${version}`} name={mine} fit={kept?.traces.find((t) => t.run === mine) ?? null} events={kept?.proof.events ?? []} />
    </section>
  );
}

function OneRun({ name, fit, events }: { name: string; fit: FitTrace | null; events: readonly SeenEvent[] }) {
  const traces = useMemo(() => new TraceDesk(name), [name]);
  useEffect(() => {
    if (fit) {
      traces.reach(fit.time_s);
    }
    void traces.open(fit ? [] : FIRST);
  }, [traces, fit]);
  return (
    <>
      <TroubleNotice trouble={traces.trouble.value} />
      <Steering traces={traces} />
      {fit && <FitPlots fit={fit} traces={traces} />}
      <Channels traces={traces} />
      {traces.read.value.filter((r) => traces.shown.value.includes(r.channel)).map((r) => <RawPlot key={r.channel} recorded={r} traces={traces} />)}
      <EventsOf events={events.filter((e) => e.run === name)} traces={traces} />
    </>
  );
}

function Steering({ traces }: { traces: TraceDesk }) {
  const go = (next: (span: Span, whole: Span) => Span): void => {
    traces.span.value = next(traces.span.peek(), traces.whole.peek());
  };
  const middle = (span: Span): number => traces.pointed.peek() ?? (span.from + span.to) / 2;
  const { from, to } = traces.span.value;
  return (
    <div class="steering">
      <div class="actions" role="group" aria-label="Stretch of time">
        <button type="button" onClick={() => go((s, w) => panned(s, (s.from - s.to) / 3, w))}>Earlier</button>
        <button type="button" onClick={() => go((s, w) => panned(s, (s.to - s.from) / 3, w))}>Later</button>
        <button type="button" onClick={() => go((s, w) => zoomed(s, 1 / CLOSER, middle(s), w))}>Closer</button>
        <button type="button" onClick={() => go((s, w) => zoomed(s, CLOSER, middle(s), w))}>Wider</button>
        <button type="button" onClick={() => go((_, w) => w)}>Whole run</button>
      </div>
      <p role="status">From {clock(from)} to {clock(to)}</p>
      <details>
        <summary>How to move through the traces</summary>
        <p id="plot-keys">
          Drag sideways, or pinch with two fingers. Click a picture first to zoom with the wheel, or hold Ctrl. Keys: arrows move, + and - come
          closer and go wider, 0 shows the whole run, Home and End its ends; Shift with an arrow moves the reading line.
        </p>
      </details>
    </div>
  );
}

const floats = (column: readonly (number | null)[]): Pyramid => new Pyramid(Float32Array.from(column, (v) => v ?? NaN));

function FitPlots({ fit, traces }: { fit: FitTrace; traces: TraceDesk }) {
  const made = useMemo(() => {
    const time_s = Float64Array.from(fit.time_s);
    const lines: readonly Line[] = [
      { name: 'upper end of the band', line: floats(fit.high_degC), stroke: EDGE },
      { name: 'lower end of the band', line: floats(fit.low_degC), stroke: EDGE },
      { name: 'measured', line: floats(fit.measured_degC), stroke: MEASURED },
      { name: fit.role === 'fit' ? 'fitted' : 'predicted', line: floats(fit.fitted_degC), stroke: FITTED },
    ];
    const left: readonly Line[] = [{ name: 'left over', line: floats(fit.residual_K), stroke: MEASURED }];
    const marks: readonly Mark[] = fit.events;
    return { time_s, lines, left, marks };
  }, [fit]);
  const choice = units.value;
  const word = fit.role === 'fit' ? 'fitted' : 'predicted';
  const letters = [...new Set(fit.events.map((e) => e.kind.replace(/_.*/, '')))];
  return (
    <>
      <figure>
        <figcaption>
          <b>Coolant</b> in {unitName('degC', choice)}
          <ul class="reading">
            <Sample stroke={MEASURED} word="measured" />
            <Sample stroke={FITTED} word={word} />
            <Sample stroke={EDGE} word="90 of 100 lie between" />
          </ul>
          {letters.length > 0 && <p class="hint">Seen though not recorded: {letters.map((k) => `${k.charAt(0).toUpperCase()} ${k}`).join(', ')}; a full mark is on or open, a hollow one off or closed.</p>}
          <Reading traces={traces} time_s={made.time_s} say={(i) => `measured ${degC(fit.measured_degC[i])}, ${word} ${degC(fit.fitted_degC[i])}, band ${degC(fit.low_degC[i])} to ${degC(fit.high_degC[i])}`} />
        </figcaption>
        <Plot label={`Coolant of ${fit.run}, measured and ${word}`} time_s={made.time_s} lines={made.lines} band={BAND} marks={made.marks} unit="degC" units={choice} time={traces} height={320} />
      </figure>
      <figure>
        <figcaption>
          <b>Left over</b>, {word} less measured, in {unitName('K', choice)}
          <Reading traces={traces} time_s={made.time_s} say={(i) => kelvin(fit.residual_K[i])} />
        </figcaption>
        <Plot label={`Coolant of ${fit.run}, ${word} less measured`} time_s={made.time_s} lines={made.left} unit="K" units={choice} time={traces} height={170} />
      </figure>
    </>
  );
}

const BAND: readonly [number, number] = [0, 1];

const degC = (v: number | null | undefined): string => (v === null || v === undefined ? '-' : anyUnit(v, 'degC', units.value));
const kelvin = (v: number | null | undefined): string => (v === null || v === undefined ? '-' : change(v, units.value));

function Sample({ stroke, word }: { stroke: Stroke; word: string }) {
  return (
    <li>
      <svg width="46" height="24" aria-hidden="true">
        <line class={`sample ${stroke.colour.slice(2)}`} x1="2" x2="44" y1="12" y2="12" stroke-width={stroke.width} stroke-dasharray={stroke.dash.join(' ')} />
      </svg>
      {word}
    </li>
  );
}

/** What stands at the time pointed at, in words. */
function Reading({ traces, time_s, say }: { traces: TraceDesk; time_s: Float64Array; say: (index: number) => string }) {
  const at = traces.pointed.value;
  const i = at === null ? -1 : nearest(time_s, at);
  return <p class="reading-at">{i < 0 ? '\u00a0' : `at ${clock(time_s[i] ?? 0)}: ${say(i)}`}</p>;
}

function Channels({ traces }: { traces: TraceDesk }) {
  if (traces.channels.value.length === 0) {
    return null;
  }
  return (
    <fieldset class="channels">
      <legend>As recorded</legend>
      {traces.channels.value.map(({ channel }) => (
        <label key={channel} class="tick">
          <input type="checkbox" checked={traces.shown.value.includes(channel)} onChange={(e) => void traces.show(channel, e.currentTarget.checked)} />
          {traces.title(channel)}
        </label>
      ))}
    </fieldset>
  );
}

function RawPlot({ recorded, traces }: { recorded: Recorded; traces: TraceDesk }) {
  const { channel, unit, time_s, line } = recorded;
  const lines = useMemo<readonly Line[]>(() => [{ name: channel, line, stroke: RAW }], [channel, line]);
  const choice = units.value;
  const title = traces.title(channel);
  return (
    <figure>
      <figcaption>
        <b>{title}</b>{unit !== '' && <> in {unitName(unit, choice)}</>}
        <Reading traces={traces} time_s={time_s} say={(i) => valueOf(line.values[i], unit)} />
      </figcaption>
      <Plot label={`${title} of ${traces.run} as recorded`} time_s={time_s} lines={lines} unit={unit} units={choice} time={traces} height={190} />
    </figure>
  );
}

const valueOf = (v: number | undefined, unit: string): string => (v === undefined || v !== v ? 'nothing' : anyUnit(v, unit, units.value));

/** Seconds shown on either side of an event. */
const AROUND = 60;

function EventsOf({ events, traces }: { events: readonly SeenEvent[]; traces: TraceDesk }) {
  if (events.length === 0) {
    return null;
  }
  return (
    <details open={events.length <= 12}>
      <summary>{events.length === 1 ? '1 thing' : `${events.length} things`} seen in it though nobody recorded them</summary>
      <Table
        label="Seen though not recorded"
        head={['at', 'what', 'coolant or other value', 'sure to', 'because', '(show it)']}
        rows={events.map((e) => ({
          key: `${e.kind} ${e.time_s}`,
          cells: [
            clock(e.time_s),
            eventName(e.kind),
            e.value === null ? '-' : anyUnit(e.value, e.unit, units.value),
            e.confidence === null ? '-' : `${Math.round(100 * e.confidence)} %`,
            e.evidence,
            <button
              type="button" aria-label={`Show ${eventName(e.kind)} at ${clock(e.time_s)}`}
              onClick={() => { traces.span.value = inside({ from: e.time_s - AROUND, to: e.time_s + AROUND }, traces.whole.peek()); }}
            >
              Show
            </button>,
          ],
        }))}
      />
    </details>
  );
}
