import type { AfterRun, Conditioning, CoolingDown } from '../../api/scheduleTypes';
import { limitTitle } from '../../lib/rooms';
import { withUnit, type Unit, type UnitChoice } from '../../lib/units';
import type { ScheduleDesk } from '../../state/scheduleDesk';
import { units } from '../../state/settings';
import { Table } from '../Table';

/** What comes of the schedule beside the cases: the fan after key-off, and what keeps the compressor off. */
export function Rules({ desk }: { desk: ScheduleDesk }) {
  const choice = units.value;
  const after = desk.report.value?.after_run;
  const ruled = desk.ruled.value;
  if (!after && !ruled) {
    return null;
  }
  const older = (of: number): string => (of === desk.number.value ? '' : 'older');
  return (
    <section class="card" data-card="rules" aria-labelledby="rules-title">
      <h2 id="rules-title">After key-off, and the compressor</h2>
      {after && <p class={older(desk.reported.value)}>{afterKeyOff(after, choice)}</p>}
      {ruled && <div class={older(ruled.of)}><Compressor rules={ruled.rules} choice={choice} /></div>}
    </section>
  );
}

function afterKeyOff(after: AfterRun, choice: UnitChoice): string {
  const room = (start: string): string => {
    const [key, value] = Object.entries(after).find(([name]) => new RegExp(`^${start}_[^_]+$`).test(name)) ?? ['', 0];
    return withUnit(Number(value), key.slice(start.length + 1) as Unit, choice);
  };
  if (after.time_s === 0) {
    return `${after.title}: the fan does not run on; room to ${limitTitle(after.limit)} ${room('room')}.`;
  }
  return `${after.title}: the fan runs on for ${after.time_s.toFixed(0)} s and takes ${after.charge_Ah.toFixed(2)} of the ${after.allowed_Ah.toFixed(1)} Ah that it may; room to ${limitTitle(after.limit)} ${room('room')}, without it ${room('room_without')}.`;
}

function Compressor({ rules, choice }: { rules: Conditioning; choice: UnitChoice }) {
  const kept = rules.cases.filter((c) => c.clutch_per_min > 0 || Object.keys(c.held_off_percent).length > 0);
  return (
    <>
      <p>A cabin that stood in the heat: {cooled(rules.soaked_cabin, choice)}. With the fan at full speed: {cooled(rules.soaked_cabin_full_fan, choice)}.</p>
      {kept.length === 0 && <p>On the design day nothing keeps a wanted compressor off.</p>}
      {kept.length > 0 && <Table
        label="The compressor on the design day"
        head={['case', 'clutch closes, /min', 'held off by', 'with a full fan']}
        rows={kept.map((c) => ({ key: c.case, cells: [c.title, c.clutch_per_min.toFixed(1), held(c.held_off_percent), held(c.held_off_full_fan_percent)] }))}
      />}
    </>
  );
}

const cooled = (c: CoolingDown, choice: UnitChoice): string =>
  `${withUnit(c.to_degC, 'degC', choice)} ${c.time_s === null ? 'not within 20 min' : `after ${c.time_s.toFixed(0)} s`}, vents ${withUnit(c.vent_after_10_min_degC, 'degC', choice)} after ten minutes`;

const held = (shares: Readonly<Record<string, number>>): string =>
  Object.entries(shares).map(([rule, percent]) => `${rule} ${percent.toFixed(0)} %`).join(', ') || 'nothing';
