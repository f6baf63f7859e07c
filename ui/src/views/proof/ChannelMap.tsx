import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { ChannelTaken, Fact, PossibleChannel, RecordedChannel, RunColumn, RunDetail, TimeMap } from '../../api/proofTypes';
import { atColumn, constants, held, inUnitOf, taken } from '../../lib/mapping';
import { clock } from '../../lib/span';
import { anyUnit } from '../../lib/units';
import { MapDesk } from '../../state/mapDesk';
import { units } from '../../state/settings';
import { Remarks } from './Remarks';
import { Table } from '../Table';
import { TroubleNotice } from '../TroubleNotice';

/** More columns than this are shown only when somebody asks for them. */
const MANY = 16;

/** Chosen instead of a column: no column holds time. */
const COUNTED = 'counted';

const FROM: Readonly<Record<RunDetail['map']['from'], string>> = {
  own: 'This map belongs to this recording.',
  shop: "This is the shop's map. Saved, it becomes one for this recording alone.",
  guess: 'Guessed from the headers. Look at each row, put right what is wrong, then save the map.',
};

/** Which column of a recording is what. */
export function ChannelMap({ name }: { name: string }) {
  const desk = useMemo(() => new MapDesk(name), [name]);
  useEffect(() => {
    void desk.open();
  }, [desk]);
  const run = desk.run.value;
  const chosen = desk.chosen.value;
  return (
    <div class="mapping">
      <TroubleNotice trouble={desk.trouble.value} />
      {!run && !desk.trouble.value && <p role="status">Reading {name} ...</p>}
      {run && chosen && (
        <>
          <p class="hint">{FROM[run.map.from]}</p>
          <TimeRow desk={desk} run={run} />
          <Columns desk={desk} run={run} channels={chosen.channels} />
          <Constants desk={desk} run={run} channels={chosen.channels} />
          <fieldset class="facts">
            <legend>{run.controls.known}</legend>
            {Object.entries(run.controls.facts).map(([key, word]) => (
              <label key={key}>
                <span>{word}</span>
                <select data-setting={`facts.${key}`} value={chosen.facts[key] ?? 'unknown'} onChange={(e) => desk.change({ facts: { ...chosen.facts, [key]: e.currentTarget.value as Fact } })}>
                  <option value="on">on</option>
                  <option value="off">off</option>
                  <option value="unknown">unknown</option>
                </select>
              </label>
            ))}
          </fieldset>
          <div aria-live="polite" class="stacked">
            <Remarks findings={desk.findings.value} about="on reading it" />
            <Read recording={desk.recording.value} possible={run.possible} />
          </div>
          {desk.conflict.value && (
            <div class="notice bad" role="alert">
              <p>{desk.conflict.value}</p>
              <div class="actions">
                <button type="button" onClick={() => void desk.settle(true)}>Read it again and keep my choices</button>
                <button type="button" onClick={() => void desk.settle(false)}>Read it again and leave my choices</button>
              </div>
            </div>
          )}
          <TroubleNotice trouble={desk.unsaved.value} word="Save again" />
          <div class="actions">
            <button type="button" class="main" disabled={desk.saving.value || (!desk.changed.value && run.map.from !== 'guess')} onClick={() => void desk.save()}>
              Save map
            </button>
            <p role="status">{desk.told.value || (desk.changed.value ? 'Changed, not saved' : '')}</p>
          </div>
        </>
      )}
    </div>
  );
}

function TimeRow({ desk, run }: { desk: MapDesk; run: RunDetail }) {
  const time = desk.chosen.value?.time ?? run.map.time;
  const header = run.columns.find((c) => c.position === time.position);
  return (
    <div class="beside">
      <label>
        <span>{run.controls.time}</span>
        <select
          data-setting="time.column"
          value={time.step !== null ? COUNTED : time.position ?? ''}
          onChange={(e) => {
            const { value } = e.currentTarget;
            desk.change({ time: value === COUNTED ? { position: null, unit: null, clock: null, step: '' } : { position: Number(value), unit: null, clock: null, step: null } });
          }}
        >
          {time.position === null && time.step === null && <option value="">choose one</option>}
          <option value={COUNTED}>{run.controls.counted}</option>
          {run.columns.map((c) => <option key={c.position} value={c.position}>{c.position}: {c.header}</option>)}
        </select>
        {time.why && <span class="hint">{time.why}</span>}
      </label>
      {time.step !== null ? <StepField desk={desk} run={run} step={time.step} /> : <UnitField desk={desk} run={run} time={time} headed={header?.unit ?? null} />}
    </div>
  );
}

function UnitField({ desk, run, time, headed }: { desk: MapDesk; run: RunDetail; time: TimeMap; headed: string | null }) {
  return (
    <label>
      <span>{run.controls.time_unit}</span>
      <select
        data-setting="time.unit"
        value={time.clock !== null ? 'clock' : time.unit ?? ''}
        onChange={(e) => {
          const { value } = e.currentTarget;
          desk.change({ time: { ...time, unit: value === '' || value === 'clock' ? null : value, clock: value === 'clock' ? 'hh:mm:ss' : null } });
        }}
      >
        <option value="">{headed ? `${headed}, as headed` : 'not said'}</option>
        <option value="s">s</option>
        <option value="ms">ms</option>
        <option value="min">min</option>
        <option value="h">h</option>
        <option value="clock">{run.controls.clock}</option>
      </select>
    </label>
  );
}

function StepField({ desk, run, step }: { desk: MapDesk; run: RunDetail; step: string }) {
  return (
    <label>
      <span>{run.controls.step}</span>
      <input
        data-setting="time.step" autocomplete="off" value={step}
        onChange={(e) => desk.change({ time: { position: null, unit: null, clock: null, step: e.currentTarget.value.trim() } })}
      />
    </label>
  );
}

function Columns({ desk, run, channels }: { desk: MapDesk; run: RunDetail; channels: readonly ChannelTaken[] }) {
  const usedFirst = useMemo(() => new Set(run.map.channels.map((c) => c.position)), [run]);
  const all = useSignal(run.columns.length <= MANY);
  const shown = run.columns.filter((c) => all.value || usedFirst.has(c.position));
  const time = desk.chosen.value?.time.position;
  return (
    <>
      <table class="columns">
        <caption class="unseen">Columns of {run.name} and what each is taken for</caption>
        <thead><tr><th scope="col">column</th><th scope="col">{run.controls.taken_for}</th><th scope="col">{run.controls.unit}</th></tr></thead>
        <tbody>
          {shown.map((c) => c.position === time
            ? <tr key={c.position}><ColumnHead column={c} /><td colSpan={2} class="hint">time</td></tr>
            : <ColumnRow key={c.position} desk={desk} column={c} run={run} channels={channels} />)}
        </tbody>
      </table>
      {shown.length < run.columns.length && (
        <button type="button" onClick={() => { all.value = true; }}>Show {run.columns.length - shown.length} more columns, not used so far</button>
      )}
    </>
  );
}

function ColumnHead({ column }: { column: RunColumn }) {
  return (
    <th scope="row">
      {column.position}: {column.header}
      <span class="examples">{column.examples.length > 0 ? `as in ${column.examples.join(', ')}` : 'empty'}</span>
    </th>
  );
}

function ColumnRow({ desk, column, run: { possible, controls }, channels }: { desk: MapDesk; column: RunColumn; run: RunDetail; channels: readonly ChannelTaken[] }) {
  const is = atColumn(channels, column.position);
  const kind = possible.find((p) => p.channel === is?.channel);
  const elsewhere = (channel: string): string => {
    const at = channels.find((c) => c.channel === channel && c.position !== column.position);
    return !at ? '' : at.position === null ? ' (now one value)' : ` (now column ${at.position})`;
  };
  const unitList = kind?.units ?? [];
  return (
    <tr class={is ? '' : 'spare'}>
      <ColumnHead column={column} />
      <td data-word={controls.taken_for}>
        <select
          data-setting={is ? `channels.${is.channel}.column` : undefined}
          aria-label={`Column ${column.position}, ${column.header}, ${controls.taken_for}`}
          value={is?.channel ?? ''}
          onChange={(e) => { const { value: channel } = e.currentTarget; desk.remap((all) => taken(all, column.position, channel)); }}
        >
          <option value="">not used</option>
          {possible.map((p) => <option key={p.channel} value={p.channel}>{p.title}{elsewhere(p.channel)}</option>)}
        </select>
        {is && is.why !== '' && <span class="hint">{is.why ?? 'you chose it'}</span>}
      </td>
      <td data-word={is ? controls.unit : undefined}>
        {is && (
          <select
            data-setting={`channels.${is.channel}.unit`}
            aria-label={`Unit of column ${column.position}, ${column.header}`}
            value={is.unit ?? ''}
            onChange={(e) => { const { value: unit } = e.currentTarget; desk.remap((all) => inUnitOf(all, column.position, unit)); }}
          >
            <option value="">{column.unit ? `${column.unit}, as headed` : 'not said'}</option>
            {is.unit !== null && !unitList.includes(is.unit) && <option value={is.unit}>{is.unit}</option>}
            {unitList.map((u) => <option key={u} value={u}>{u}</option>)}
          </select>
        )}
      </td>
    </tr>
  );
}

function Constants({ desk, run: { possible, controls }, channels }: { desk: MapDesk; run: RunDetail; channels: readonly ChannelTaken[] }) {
  const channel = useSignal('');
  const value = useSignal('');
  const free = possible.filter((p) => channels.every((c) => c.channel !== p.channel));
  const title = (key: string): string => possible.find((p) => p.channel === key)?.title ?? key;
  const ready = channel.value !== '' && value.value.trim() !== '';
  return (
    <fieldset class="constants">
      <legend>{controls.constant}</legend>
      {constants(channels).map((c) => (
        <p key={c.channel} class="line">
          <b>{title(c.channel)}</b> {c.constant}
          <button type="button" data-setting={`channels.${c.channel}.constant`} onClick={() => desk.remap((all) => held(all, c.channel, ''))}>Take back<span class="unseen"> {title(c.channel)}</span></button>
        </p>
      ))}
      <div class="beside">
        <label>
          <span>What no column has</span>
          <select value={channel.value} onChange={(e) => { channel.value = e.currentTarget.value; }}>
            <option value="">nothing</option>
            {free.map((p) => <option key={p.channel} value={p.channel}>{p.title}</option>)}
          </select>
        </label>
        <label>
          <span>Value with its unit, as in 22 degC</span>
          <input autocomplete="off" value={value.value} onInput={(e) => { value.value = e.currentTarget.value; }} />
        </label>
        <button
          type="button" disabled={!ready}
          onClick={() => {
            desk.remap((all) => held(all, channel.value, value.value.trim()));
            channel.value = '';
            value.value = '';
          }}
        >
          Set
        </button>
      </div>
    </fieldset>
  );
}

function Read({ recording, possible }: { recording: RunDetail['recording']; possible: readonly PossibleChannel[] }) {
  if (!recording) {
    return <p class="unread">It cannot be read like this yet.</p>;
  }
  return (
    <details class="notice">
      <summary>Read: {recording.rows} rows over {clock(recording.duration_s)}, {recording.channels.length} channels</summary>
      <Table
        label="What was read"
        head={['channel', 'from', 'to', 'good samples']}
        rows={recording.channels.map((c) => ({
          key: c.channel,
          cells: [possible.find((p) => p.channel === c.channel)?.title ?? c.channel, value(c, c.min), value(c, c.max), `${c.good} of ${c.samples}`],
        }))}
      />
    </details>
  );
}

const value = (c: RecordedChannel, v: number | null): string => (v === null ? '-' : anyUnit(v, c.unit, units.value));
