import { useEffect, useMemo } from 'preact/hooks';
import { hearing } from '../../state/events';
import { ProofDesk } from '../../state/proofDesk';
import { Fit } from './Fit';
import { NextTests } from './NextTests';
import { Parameters } from './Parameters';
import { Recordings } from './Recordings';
import { Result } from './Result';
import { SignOff } from './SignOff';
import { Traces } from './Traces';
import { TroubleNotice } from '../TroubleNotice';

/** From recordings to a signed document. */
export function ProofView({ id }: { id: string }) {
  const desk = useMemo(() => new ProofDesk(id), [id]);
  useEffect(() => desk.follow(), [desk]);
  const kept = desk.proof.value;
  useEffect(() => {
    document.title = `Proof of ${desk.title.value} - Hotday`;
  }, [desk.title.value]);
  return (
    <div class="build proof">
      <div class="title">
        <h1>{desk.title.value}</h1>
        {desk.note.value !== '' && <p class="note">{desk.note.value}</p>}
      </div>
      {!hearing.value && <div class="notice bad" role="status"><p>Hotday does not answer at the moment; what stands here may be old. Trying again ...</p></div>}
      <TroubleNotice trouble={desk.trouble.value} />
      <div class="work">
        <Recordings desk={desk} />
        <Fit desk={desk} />
      </div>
      {kept === undefined && !desk.trouble.value && <p role="status">Reading the last proof ...</p>}
      {kept === null && <p class="quiet">No proof yet: add a recording, say what its columns are, and fit.</p>}
      {kept && <Result kept={kept} />}
      <Traces desk={desk} kept={kept ?? null} />
      {kept && (
        <>
          <Parameters parameters={kept.proof.parameters} runs={kept.fit.length} />
          <NextTests tests={kept.proof.next_tests} ceilings={kept.proof.ceilings} />
          <SignOff desk={desk} kept={kept} />
        </>
      )}
    </div>
  );
}
