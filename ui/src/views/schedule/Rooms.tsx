import type { CaseFigures, Report } from '../../api/scheduleTypes';
import { limitsOf, limitTitle, roomsOf } from '../../lib/rooms';
import { bare, unitName, withUnit, type Unit, type UnitChoice } from '../../lib/units';
import type { Row, ScheduleDesk } from '../../state/scheduleDesk';
import { units } from '../../state/settings';
import { Table } from '../Table';
import { Verdict } from '../Verdict';

/** Smaller differences than this are none. */
const NONE = 0.05;

interface Seen {
  readonly row: Row;
  readonly other: CaseFigures | undefined;
  readonly older: boolean;
}

/** What the schedule does, case by case, beside another one. */
export function Rooms({ desk, day }: { desk: ScheduleDesk; day: number }) {
  const choice = units.value;
  const other = otherOf(desk);
  const all = desk.rows.value
    .map((row, i) => ({ row, other: other?.cases[i], older: row?.of !== desk.number.value }))
    .filter((seen): seen is Seen => seen.row !== undefined);
  const hot = all.filter(({ row }) => Math.abs(row.figures.ambient_degC - day) < NONE);
  const counted = all.filter(({ row }) => row.figures.share_percent > 0);
  const word = desk.beside.value === 'designed' ? 'the designed one' : 'the saved sheet';
  return (
    <>
      <section class="card rooms" aria-labelledby="rooms-title" aria-busy={desk.progress.value !== null}>
        <h2 id="rooms-title">Room to each limit on the design day</h2>
        <div class="asking">
          <p class="hint">At {withUnit(day, 'degC', choice)}. Small: what {word} has. In brackets: gives way with a fan at full speed too, no fault of a schedule.</p>
          {desk.designed.value && (
            <label>
              <span>Beside</span>
              <select value={desk.beside.value} onChange={(e) => { desk.beside.value = e.currentTarget.value as 'sheet' | 'designed'; }}>
                <option value="sheet">the saved sheet</option>
                <option value="designed">the designed one</option>
              </select>
            </label>
          )}
        </div>
        {hot.length === 0 && <p role="status">Waiting for the first case ...</p>}
        {hot.length > 0 && <Limits seen={hot} choice={choice} />}
      </section>
      {counted.length > 0 && (
        <section class="card" aria-labelledby="cases-title">
          <h2 id="cases-title">Piece by piece of the day</h2>
          <Table
            label="What the fan does in each piece of the day" kind="pieces-of"
            head={['case', 'share, %', 'fan, %', 'Wh/h', 'starts/h', 'coolant swings']}
            rows={counted.map((seen) => ({ key: name(seen), cells: piece(seen, choice) }))}
          />
        </section>
      )}
    </>
  );
}

const otherOf = (desk: ScheduleDesk): Report | null | undefined => (desk.beside.value === 'designed' ? desk.designed.value?.report : desk.saved.value);

const name = ({ row }: Seen): string => `${row.figures.case} ${row.figures.ambient_degC}`;

function Limits({ seen, choice }: { seen: readonly Seen[]; choice: UnitChoice }) {
  const limits = limitsOf(seen.map(({ row }) => row.figures));
  return (
    <Table
      label="Rooms, case by case" kind="limits-of"
      head={['case', ...limits.map((limit) => `${limitTitle(limit)}, ${unitName(unitOf(seen, limit), choice)}`)]}
      rows={seen.map((s) => ({
        key: name(s),
        cells: [
          <>{s.row.figures.title} <span class={s.older ? 'older' : ''}><Holds figures={s.row.figures} /></span></>,
          ...limits.map((limit) => <Room key={limit} limit={limit} seen={s} choice={choice} />),
        ],
      }))}
    />
  );
}

/** A case that nothing can hold is no merit of the schedule. */
function Holds({ figures }: { figures: CaseFigures }) {
  const given = roomsOf(figures).some((r) => r.room < 0);
  return figures.holds && given ? <span class="hint">gives way with a full fan too</span> : <Verdict holds={figures.holds} />;
}

const unitOf = (seen: readonly Seen[], limit: string): Unit =>
  seen.flatMap(({ row }) => roomsOf(row.figures)).find((room) => room.limit === limit)?.unit ?? '1';

function Room({ limit, seen, choice }: { limit: string; seen: Seen; choice: UnitChoice }) {
  const now = roomsOf(seen.row.figures).find((r) => r.limit === limit);
  const was = seen.other && roomsOf(seen.other).find((r) => r.limit === limit);
  if (!now) {
    return <>-</>;
  }
  const said = (room: number): string => bare(room, now.unit, choice);
  const text = said(now.room);
  const excused = now.room < 0 && !now.must;
  const moved = was !== undefined && said(was.room) !== text;
  return (
    <>
      <span class={`${seen.older ? 'older' : ''}${now.room < 0 && now.must ? ' gone' : ''}`}>{excused ? `(${text})` : now.room < 0 ? <b>{text}</b> : text}</span>
      {moved && <small> {said(was.room)}</small>}
    </>
  );
}

function piece({ row, other, older }: Seen, choice: UnitChoice) {
  const f = row.figures;
  const beside = (now: string, was: string | undefined) => (
    <><span class={older ? 'older' : ''}>{now}</span>{was !== undefined && was !== now && <small> {was}</small>}</>
  );
  const swing = (c: CaseFigures): string =>
    c.cycling.period_s === null ? '-' : `${withUnit(c.cycling.amplitude_K, 'K', choice)} in ${c.cycling.period_s.toFixed(0)} s`;
  return [
    <>{f.title} <span class="hint">at {withUnit(f.ambient_degC, 'degC', choice)}</span></>,
    f.share_percent.toFixed(0),
    beside(f.fan_percent.toFixed(0), other?.fan_percent.toFixed(0)),
    beside(f.energy_Wh_per_h.toFixed(0), other?.energy_Wh_per_h.toFixed(0)),
    beside(f.starts_per_h.toFixed(1), other?.starts_per_h.toFixed(1)),
    beside(swing(f), other && swing(other)),
  ];
}
