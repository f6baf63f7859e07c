import type { Report } from '../../api/scheduleTypes';
import type { ScheduleDesk } from '../../state/scheduleDesk';
import { Table, type TableRow } from '../Table';
import { Verdict } from '../Verdict';

/** The mean of the day of each schedule there is. */
export function Day({ desk }: { desk: ScheduleDesk }) {
  const report = desk.report.value;
  const designed = desk.designed.value?.report;
  const older = desk.reported.value !== desk.number.value;
  const changed = Object.keys(desk.changes.value).length > 0;
  return (
    <section class="card" data-card="day" aria-labelledby="day-title">
      <h2 id="day-title">Mean of the day</h2>
      <p class="hint">A schedule holds when nothing gives way that a fan at full speed holds.</p>
      {report && (
        <Table
          label="Mean of the day of each schedule"
          head={['schedule', 'holds', 'Wh/h', 'starts/h', 'cost, W']}
          rows={[
            ...(changed ? [row('now', <b class={older ? 'older' : ''}>as it stands here</b>, report, desk.aim.value, older)] : []),
            ...(desk.saved.value ? [row('sheet', 'of the saved sheet', desk.saved.value, desk.aim.value)] : []),
            ...(designed ? [row('designed', `designed, ${designed.aim}`, designed, desk.aim.value)] : []),
            { key: 'plain', cells: ['a switch, on at 205 degF, off at 195 degF', '-', report.plain_switch.energy_Wh_per_h.toFixed(0), report.plain_switch.starts_per_h.toFixed(1), '-'] },
          ]}
        />
      )}
      {!report && <p role="status">Judging the schedule of the sheet ...</p>}
    </section>
  );
}

function row(key: string, title: TableRow['cells'][number], r: Report, aim: string, older = false): TableRow {
  const figure = (text: string) => <span class={older ? 'older' : ''}>{text}</span>;
  return {
    key,
    cells: [title, <span class={older ? 'older' : ''}><Verdict holds={r.holds} /></span>, figure(r.energy_Wh_per_h.toFixed(0)), figure(r.starts_per_h.toFixed(1)), r.aim === aim ? figure(r.cost_W.toFixed(0)) : '-'],
  };
}
