import { useEffect, useMemo } from 'preact/hooks';
import { ScheduleDesk } from '../../state/scheduleDesk';
import { useUndoKeys } from '../Changes';
import { TroubleNotice } from '../TroubleNotice';
import { AsText } from './AsText';
import { CurveCard } from './CurveCard';
import { Day } from './Day';
import { Design } from './Design';
import { Other } from './Other';
import { Rooms } from './Rooms';
import { Rules } from './Rules';
import { ScheduleBar } from './ScheduleBar';
import { Told } from './Told';

/** When and how hard the fan runs: curves to drag, and what comes of it in every case. */
export function ScheduleView({ id }: { id: string }) {
  const desk = useMemo(() => new ScheduleDesk(id), [id]);
  useEffect(() => desk.follow(), [desk]);
  useUndoKeys(desk);
  const build = desk.build.value;
  useEffect(() => {
    document.title = `Fan schedule of ${build?.name ?? id} - Hotday`;
  }, [build?.name, id]);
  if (!build?.in_order) {
    return (
      <div class="build">
        <h1>{build?.name ?? id}</h1>
        {build && <div class="notice bad"><p>The saved sheet has faults; put them right on the sheet first.</p></div>}
        {!build && <TroubleNotice trouble={desk.trouble.value} />}
        {!build && !desk.trouble.value && <p role="status">Reading the sheet ...</p>}
      </div>
    );
  }
  const curves = (build.curves ?? []).filter(({ key }) => desk.typed(key) !== '' || desk.designedValues.value.has(key));
  return (
    <div class="build schedule">
      <div class="title">
        <h1>{build.name}</h1>
        {build.note !== '' && <p class="note">{build.note}</p>}
      </div>
      <ScheduleBar desk={desk} />
      <div class="turning">
        <div class="curves">
          <Key desk={desk} />
          {curves.map((curve) => <CurveCard key={curve.key} desk={desk} curve={curve} />)}
          <Other desk={desk} curves={curves} />
        </div>
        <div class="doing">
          <Design desk={desk} />
          <Day desk={desk} />
          <Told desk={desk} />
          <Rooms desk={desk} day={build.day_degC ?? 0} />
          <Rules desk={desk} />
          <AsText desk={desk} />
        </div>
      </div>
    </div>
  );
}

/** What the other lines are, once there are any. */
function Key({ desk }: { desk: ScheduleDesk }) {
  const changed = Object.keys(desk.changes.value).length > 0;
  if (!changed && !desk.designed.value) {
    return null;
  }
  return (
    <ul class="key" aria-label="Lines">
      <li><svg width="44" height="14" aria-hidden="true" class="curve"><path class="now" d="M2 7H42" /></svg>as it stands here</li>
      <li><svg width="44" height="14" aria-hidden="true"><path class="ghost-curve sheet" d="M2 7H42" /></svg>saved sheet</li>
      {desk.designed.value && <li><svg width="44" height="14" aria-hidden="true"><path class="ghost-curve designed" d="M2 7H42" /></svg>designed, {desk.designed.value.report.aim}</li>}
    </ul>
  );
}
