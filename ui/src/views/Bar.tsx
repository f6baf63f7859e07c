import type { Ceiling } from '../api/types';
import { withUnit } from '../lib/units';
import type { Desk } from '../state/desk';
import { units } from '../state/settings';
import { TroubleNotice } from './TroubleNotice';
import { Verdict } from './Verdict';

/** Stays in sight: the worst ceiling and what can be done with the changes. */
export function Bar({ desk }: { desk: Desk }) {
  const { past, now, future } = desk.history.value;
  const changed = Object.keys(now).length;
  const worst = worstOf(desk.good.value?.ceilings ?? []);
  return (
    <section class="strip" aria-label="Worst ceiling and changes">
      <div class="gist">
        <Worst worst={worst} />
        <p class="state">
          <span role="status">{state(desk, changed)}</span>
          {worst && <span class="wide which">Worst: {worst.title}</span>}
        </p>
      </div>
      <div class="actions" role="group" aria-label="Changes">
        <button type="button" disabled={past.length === 0} aria-keyshortcuts="Control+Z" onClick={() => desk.undo()}>Undo</button>
        <button type="button" disabled={future.length === 0} aria-keyshortcuts="Control+Shift+Z" onClick={() => desk.redo()}>Redo</button>
        <button type="button" aria-pressed={desk.comparing.value} onClick={() => { desk.comparing.value = !desk.comparing.value; }}>
          Compare<span class="wide"> with saved</span>
        </button>
        <button type="button" class="main" disabled={changed === 0 || desk.saving.value} onClick={() => void desk.save()}>Save</button>
      </div>
      <TroubleNotice trouble={desk.trouble.value} />
      <TroubleNotice trouble={desk.unsaved.value} word="Save again" />
      {desk.conflict.value && (
        <div class="notice bad" role="alert">
          <p>{desk.conflict.value.message}</p>
          <div class="actions">
            <button type="button" onClick={() => void desk.settle(true)}>Read it again and lay my changes over it</button>
            <button type="button" onClick={() => void desk.settle(false)}>Read it again and throw my changes away</button>
          </div>
        </div>
      )}
    </section>
  );
}

function state(desk: Desk, changed: number): string {
  if (desk.saving.value) {
    return 'Saving ...';
  }
  const faults = desk.findings.value.filter((f) => f.severity === 'fault').length;
  if (faults > 0 && !desk.inOrder.value) {
    const count = faults === 1 ? '1 fault' : `${faults} faults`;
    const what = desk.good.value ? `${count}; figures of the last sheet in order` : count;
    return desk.told.value === '' ? what : `${what}. ${desk.told.value}`;
  }
  if (desk.waiting.value) {
    return 'Predicting ...';
  }
  if (desk.told.value !== '') {
    return desk.told.value;
  }
  return changed === 0 ? 'As saved' : changed === 1 ? '1 change, not saved' : `${changed} changes, not saved`;
}

function worstOf(ceilings: readonly Ceiling[]): Ceiling | undefined {
  return [...ceilings].sort((a, b) => a.ceiling_degC - b.ceiling_degC)[0];
}

function Worst({ worst }: { worst: Ceiling | undefined }) {
  if (!worst) {
    return <p class="worst-line">No ceilings before the sheet is in order.</p>;
  }
  return (
    <p class="worst-line">
      <b class="number">{withUnit(worst.ceiling_degC, 'degC', units.value)}</b> <Verdict holds={worst.holds} />
    </p>
  );
}
