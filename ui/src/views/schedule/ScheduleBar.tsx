import type { ScheduleDesk } from '../../state/scheduleDesk';
import { Changes, changesSaid } from '../Changes';
import { Verdict } from '../Verdict';

/** Stays in sight: whether it holds, what it takes, and what can be done with the changes. */
export function ScheduleBar({ desk }: { desk: ScheduleDesk }) {
  const report = desk.report.value;
  const current = desk.reported.value === desk.number.value;
  return (
    <section class="strip" aria-label="Verdict and changes">
      <div class="gist">
        <p class="worst-line">
          {report
            ? <span class={current ? '' : 'older'}><Verdict holds={report.holds} /> <b class="number">{report.energy_Wh_per_h.toFixed(0)} Wh/h</b> {starts(report.starts_per_h)}{faulty(desk)}</span>
            : 'Nothing is judged yet.'}
        </p>
        <p class="state"><span role="status">{state(desk)}</span></p>
      </div>
      <Changes desk={desk} />
    </section>
  );
}

/** What a schedule that holds may still have wrong with it. */
function faulty(desk: ScheduleDesk) {
  const faults = desk.said().filter((f) => f.severity === 'fault' && f.key !== 'limit-not-held').length;
  return faults > 0 && <b class="fault">, {faults === 1 ? '1 fault' : `${faults} faults`}</b>;
}

const starts = (perHour: number): string => `${perHour.toFixed(1)} starts/h`;

function state(desk: ScheduleDesk): string {
  const changed = Object.keys(desk.changes.value).length;
  if (desk.saving.value) {
    return 'Saving ...';
  }
  if (!desk.inOrder.value) {
    return `Not a schedule yet; figures are those of the last one in order.${desk.told.value === '' ? '' : ` ${desk.told.value}`}`;
  }
  const progress = desk.progress.value;
  if (progress) {
    return progress.cases === 0 ? 'Working out what a fan at full speed holds ...' : `Judged ${progress.told} of ${progress.cases} cases; slanted figures are older.`;
  }
  return desk.told.value === '' ? changesSaid(changed) : desk.told.value;
}
