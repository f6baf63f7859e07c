import type { Ceiling } from '../api/types';
import { withUnit } from '../lib/units';
import type { Desk } from '../state/desk';
import { units } from '../state/settings';
import { Changes, changesSaid } from './Changes';
import { Verdict } from './Verdict';

/** Stays in sight: the worst ceiling and what can be done with the changes. */
export function Bar({ desk }: { desk: Desk }) {
  const changed = Object.keys(desk.history.value.now).length;
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
      <Changes desk={desk}>
        <button type="button" aria-pressed={desk.comparing.value} onClick={() => { desk.comparing.value = !desk.comparing.value; }}>
          Compare<span class="wide"> with saved</span>
        </button>
      </Changes>
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
  return changesSaid(changed);
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
