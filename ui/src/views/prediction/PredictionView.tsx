import { useEffect, useMemo } from 'preact/hooks';
import { PredictionDesk } from '../../state/predictionDesk';
import { Matters } from './Matters';
import { RoadMapView } from './RoadMapView';
import { Rows } from './Rows';
import { WhatIf } from './WhatIf';
import { TroubleNotice } from '../TroubleNotice';

/** How hot a day the saved sheet stands, before anything was driven. */
export function PredictionView({ id }: { id: string }) {
  const desk = useMemo(() => new PredictionDesk(id), [id]);
  useEffect(() => desk.follow(), [desk]);
  const build = desk.build.value;
  useEffect(() => {
    document.title = `Prediction of ${build?.name ?? id} - Hotday`;
  }, [build?.name, id]);
  return (
    <div class="build prediction">
      <div class="title">
        <h1>{build?.name ?? id}</h1>
        {build && build.note !== '' && <p class="note">{build.note}</p>}
      </div>
      <TroubleNotice trouble={desk.trouble.value} />
      {!build && !desk.trouble.value && <p role="status">Reading the sheet ...</p>}
      {build && !build.answer && <div class="notice bad"><p>The saved sheet has faults; put them right on the sheet first.</p></div>}
      {build?.answer && (
        <>
          <Rows desk={desk} />
          <RoadMapView desk={desk} />
          <WhatIf desk={desk} build={build} />
          <Matters desk={desk} />
        </>
      )}
    </div>
  );
}
