import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { Run } from '../../api/proofTypes';
import type { Role } from '../../lib/roles';
import { bytes } from '../../lib/said';
import type { ProofDesk } from '../../state/proofDesk';
import { forgetSending, runs, runsTrouble, send, sendings, stopSending, type Sending } from '../../state/runs';
import { ChannelMap } from './ChannelMap';
import { Remarks } from './Remarks';
import { TroubleNotice } from '../TroubleNotice';

const READ_BY: Readonly<Record<Run['map'], string>> = {
  own: 'read by a map of its own',
  shop: "read by the shop's map",
  none: 'not read yet: say what its columns are',
};

export function Recordings({ desk }: { desk: ProofDesk }) {
  const all = runs.value;
  const first = (run: Run): void => {
    if (run.map === 'none') {
      desk.opened.value = run.name;
    }
  };
  return (
    <section class="card recordings" aria-labelledby="recordings-title">
      <h2 id="recordings-title">Recordings</h2>
      <DropZone take={(files) => send(files, first)} />
      <ul class="sendings" aria-live="polite">
        {sendings.value.map((s) => <Going key={s.number} sending={s} />)}
      </ul>
      <TroubleNotice trouble={runsTrouble.value} />
      {all && all.length === 0 && <p>None yet. A recording is what the logger wrote while the car was driven: a table of text, as it is or packed (.gz).</p>}
      <ul class="runs">
        {all?.map((run) => <Row key={run.name} run={run} desk={desk} />)}
      </ul>
    </section>
  );
}

function DropZone({ take }: { take: (files: readonly File[]) => void }) {
  const over = useSignal(false);
  const input = useRef<HTMLInputElement>(null);
  return (
    <div
      class={`drop${over.value ? ' over' : ''}`}
      onDragOver={(event) => {
        event.preventDefault();
        over.value = true;
      }}
      onDragLeave={() => { over.value = false; }}
      onDrop={(event) => {
        event.preventDefault();
        over.value = false;
        take([...(event.dataTransfer?.files ?? [])]);
      }}
    >
      <button type="button" class="main" onClick={() => input.current?.click()}>Add recordings ...</button>
      <p>or drop the files here</p>
      <input
        ref={input} type="file" multiple accept=".csv,.txt,.tsv,.gz,.parquet,.mf4,.mdf,text/plain,text/csv" aria-label="Recordings to add" class="unseen" tabIndex={-1}
        onChange={(event) => {
          take([...(event.currentTarget.files ?? [])]);
          event.currentTarget.value = '';
        }}
      />
    </div>
  );
}

function Going({ sending }: { sending: Sending }) {
  const { number, file, share, state, message, findings } = sending;
  const percent = Math.round(100 * share);
  const words = state === 'waiting' ? 'waits' : state === 'taken' ? 'taken into the shop' : state === 'refused' ? message : share < 1 ? `${percent} % sent` : 'sent; being read ...';
  return (
    <li class="sending">
      <div class="run">
        <p class="what"><b>{file}</b> <span>{words}</span></p>
        {state === 'going' || state === 'waiting'
          ? <button type="button" onClick={() => stopSending(number)}>Stop<span class="unseen"> sending {file}</span></button>
          : <button type="button" onClick={() => forgetSending(number)}>Hide<span class="unseen"> {file}</span></button>}
      </div>
      {state === 'going' && <progress aria-label={`Sending ${file}`} max={100} value={percent} />}
      {findings.length > 0 && <Remarks findings={findings} about={`on ${file}`} />}
    </li>
  );
}

function Row({ run, desk }: { run: Run; desk: ProofDesk }) {
  const open = desk.opened.value === run.name;
  const role = desk.roles.value[run.name] ?? 'none';
  return (
    <li class={open ? 'open' : ''}>
      <div class="run">
        <div class="what">
          <h3>{run.title}</h3>
          {run.title !== run.name && <p class="hint">kept as {run.name}</p>}
          <p class={run.map === 'none' ? 'unread' : 'hint'}>{bytes(run.bytes)}, {READ_BY[run.map]}</p>
        </div>
        <label class="role">
          <span class="unseen">Use of {run.title}</span>
          <select value={role} onChange={(e) => desk.pick(run.name, e.currentTarget.value as Role)}>
            <option value="fit">fit to it</option>
            <option value="predict">predict it</option>
            <option value="none">not used</option>
          </select>
        </label>
        <button type="button" aria-expanded={open} onClick={() => { desk.opened.value = open ? null : run.name; }}>
          Columns<span class="unseen"> of {run.title}</span>
        </button>
      </div>
      {open && <ChannelMap name={run.name} />}
    </li>
  );
}
