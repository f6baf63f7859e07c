import { useEffect, useMemo } from 'preact/hooks';
import { Desk } from '../state/desk';
import { listen } from '../state/events';
import { Bar } from './Bar';
import { Ceilings, LimitsNow } from './Ceilings';
import { useUndoKeys } from './Changes';
import { Compare } from './Compare';
import { Drawing } from './Drawing';
import { Findings } from './Findings';
import { PartPanel } from './PartPanel';
import { TroubleNotice } from './TroubleNotice';
import { Values } from './Values';

export function BuildView({ id }: { id: string }) {
  const desk = useMemo(() => new Desk(id), [id]);
  useEffect(() => {
    void desk.open();
    const ends = [
      listen('sheet', ({ build, version }) => build === id && void desk.heard(version)),
      listen('joined', () => void desk.catchUp()),
    ];
    return () => ends.forEach((end) => end());
  }, [desk, id]);
  useUndoKeys(desk);
  const build = desk.build.value;
  useEffect(() => {
    document.title = `${build?.name ?? id} - Hotday`;
  }, [build?.name, id]);

  if (!build) {
    return (
      <div class="build">
        <h1>{id}</h1>
        {desk.trouble.value
          ? <TroubleNotice trouble={desk.trouble.value} />
          : <p role="status">Reading the sheet and predicting ...</p>}
      </div>
    );
  }
  return (
    <div class="build">
      <div class="title">
        <h1>{build.name}</h1>
        {build.note !== '' && <p class="note">{build.note}</p>}
      </div>
      <Bar desk={desk} />
      <Findings desk={desk} />
      <div class="bench">
        <div class="left">
          <Drawing desk={desk} />
          {desk.comparing.value && <Compare desk={desk} />}
          <PartPanel desk={desk} />
        </div>
        <Ceilings desk={desk} />
        <LimitsNow desk={desk} />
      </div>
      <Values desk={desk} />
    </div>
  );
}
