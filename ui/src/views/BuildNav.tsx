import type { JSX } from 'preact';
import { buildLink, type Way } from '../state/route';
import { BuildView } from './BuildView';
import { PredictionView } from './prediction/PredictionView';
import { ProofView } from './proof/ProofView';
import { ScheduleView } from './schedule/ScheduleView';

interface Listed {
  readonly way: Way;
  readonly word: string;
  readonly View: (props: { readonly id: string }) => JSX.Element;
}

/** Every way of one build that has a view, in the order of the work. */
const WAYS: readonly Listed[] = [
  { way: 'sheet', word: 'Sheet', View: BuildView },
  { way: 'prediction', word: 'Prediction', View: PredictionView },
  { way: 'schedule', word: 'Fan schedule', View: ScheduleView },
  { way: 'proof', word: 'Proof', View: ProofView },
];

/** One build, on one of its ways; a way without a view leads to the sheet. */
export function BuildWay({ id, way }: { id: string; way: Way }) {
  const shown = WAYS.find((w) => w.way === way) ?? WAYS[0];
  return (
    <>
      <nav class="ways" aria-label="Ways of this build">
        {WAYS.map((w) => (
          <a key={w.way} href={buildLink(id, w.way)} aria-current={w === shown ? 'page' : undefined}>{w.word}</a>
        ))}
      </nav>
      {shown && <shown.View key={`${shown.way} ${id}`} id={id} />}
    </>
  );
}
