import { useSignal } from '@preact/signals';
import type { Build } from '../../api/types';
import { change, withUnit } from '../../lib/units';
import { refusal } from '../../lib/typed';
import type { PredictionDesk } from '../../state/predictionDesk';
import { units } from '../../state/settings';
import { Said } from '../TypedField';
import { Table } from '../Table';
import { TroubleNotice } from '../TroubleNotice';

/** Moves smaller than this, in K, are none. */
const NONE = 0.05;

/** What other values would do to every ceiling; nothing is written. */
export function WhatIf({ desk, build }: { desk: PredictionDesk; build: Build }) {
  const key = useSignal('');
  const value = useSignal('');
  const refused = useSignal<string | null>(null);
  const known = new Map([...build.assumptions.map((a) => [a.key, a.value] as const), ...build.values.map((v) => [v.key, v.typed] as const)]);
  const now = known.get(key.value.trim());
  const add = (): void => {
    refused.value = now === undefined ? `'${key.value.trim()}' is not a value of this sheet; pick one of the list.` : refusal(value.value, now);
    if (refused.value === null) {
      desk.suppose({ key: key.value.trim(), value: value.value.trim() });
      value.value = '';
    }
  };
  return (
    <section class="card whatif" aria-labelledby="whatif-title">
      <h2 id="whatif-title">What if</h2>
      <p class="hint">Try other values against the saved sheet; nothing is written.</p>
      <form class="suppose" onSubmit={(event) => { event.preventDefault(); add(); }}>
        <label>
          <span>Value of the sheet</span>
          <input list="whatif-keys" value={key.value} autocomplete="off" autocapitalize="off" spellcheck={false} onInput={(e) => { key.value = e.currentTarget.value; }} />
        </label>
        <datalist id="whatif-keys">{[...known].map(([k, v]) => <option key={k} value={k}>{v}</option>)}</datalist>
        <label>
          <span>would be{now === undefined ? '' : ` (now ${now})`}</span>
          <input value={value.value} autocomplete="off" spellcheck={false} onInput={(e) => { value.value = e.currentTarget.value; }} />
        </label>
        <button type="submit" class="main">Try it</button>
      </form>
      {refused.value && <p class="bad" role="alert">{refused.value}</p>}
      <TroubleNotice trouble={desk.whatIfTrouble.value} />
      {desk.whatIf.value.length > 0 && (
        <ul class="supposed">
          {desk.whatIf.value.map((c) => (
            <li key={c.key}>
              <span><b>{c.key}</b> {c.value}</span>
              <button type="button" aria-label={`Take back ${c.key}`} onClick={() => desk.drop(c.key)}>Take back</button>
            </li>
          ))}
        </ul>
      )}
      <Changes desk={desk} />
    </section>
  );
}

function Changes({ desk }: { desk: PredictionDesk }) {
  const choice = units.value;
  const answer = desk.answer.value;
  if (!answer) {
    return null;
  }
  if (!answer.in_order) {
    return <div class="said" role="alert"><Said findings={answer.findings} /></div>;
  }
  return (
    <Table
      label="What these values change"
      head={['case', 'as saved', 'with it', 'change', 'gives way first']}
      rows={answer.ceilings.map((c) => {
        const moved = c.saved_degC === null ? 0 : c.ceiling_degC - c.saved_degC;
        return {
          key: c.case,
          cells: [
            c.title,
            c.saved_degC === null ? '-' : withUnit(c.saved_degC, 'degC', choice),
            withUnit(c.ceiling_degC, 'degC', choice),
            Math.abs(moved) < NONE ? 'none' : <b>{change(moved, choice)}</b>,
            c.binding_title,
          ],
        };
      })}
    />
  );
}
