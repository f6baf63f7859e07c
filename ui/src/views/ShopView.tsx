import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { readShop } from '../api/client';
import type { ProvenCeiling } from '../api/proofTypes';
import type { Shop, ShopBuild, Stage, Worst } from '../api/types';
import { ceilingWords, holdsOn, intervalWords } from '../lib/said';
import { change, withUnit, type UnitChoice } from '../lib/units';
import { listen } from '../state/events';
import { buildLink } from '../state/route';
import { unitsOf } from '../state/settings';
import { troubleOf, type Trouble } from '../state/trouble';
import { TroubleNotice } from './TroubleNotice';
import { Verdict } from './Verdict';

const shop = signal<Shop | null>(null);
const trouble = signal<Trouble | null>(null);
const wanted = signal('');

async function load(): Promise<void> {
  try {
    shop.value = await readShop();
    trouble.value = null;
  } catch (reason) {
    trouble.value = troubleOf(reason, () => void load());
  }
}

export function ShopView() {
  useEffect(() => {
    document.title = 'Builds - Hotday';
    void load();
    const ends = (['sheet', 'runs', 'proof', 'joined'] as const).map((kind) => listen(kind, () => void load()));
    return () => ends.forEach((end) => end());
  }, []);
  const words = wanted.value.toLowerCase().split(/\s+/).filter(Boolean);
  const all = shop.value?.builds ?? [];
  const found = all.filter((b) => words.every((w) => textOf(b).includes(w)));
  return (
    <div class="shop">
      <div class="shop-head">
        <h1>{shop.value ? `Builds of ${shop.value.shop}` : 'Builds'}</h1>
        <label class="search">
          <span>Search</span>
          <input type="search" value={wanted.value} onInput={(e) => { wanted.value = e.currentTarget.value; }} />
        </label>
      </div>
      <p class="count" role="status">
        {shop.value ? counted(found.length, shop.value.builds.length) : trouble.value ? '' : 'Reading the shop and predicting each build ...'}
      </p>
      <TroubleNotice trouble={trouble.value} />
      <ul class="tags">
        {found.map((build) => <Tag key={build.id} build={build} twin={all.some((b) => b !== build && b.name === build.name)} />)}
      </ul>
    </div>
  );
}

const textOf = (b: ShopBuild): string => `${b.id} ${b.name} ${b.note} ${b.proven?.binding_title ?? b.worst?.binding_title ?? ''}`.toLowerCase();

function counted(found: number, all: number): string {
  const builds = all === 1 ? '1 build' : `${all} builds`;
  return found === all ? builds : `${found} of ${builds}`;
}

/** Builds of the same name are told apart by their folders. */
function Tag({ build, twin }: { build: ShopBuild; twin: boolean }) {
  const faults = build.faults.length;
  return (
    <li class="tag">
      <h2><a href={buildLink(build.id)}>{twin ? `${build.name} (${build.id})` : build.name}</a></h2>
      {build.note !== '' && <p class="note">{build.note}</p>}
      {faults > 0 && (
        <p class="faults"><span class="sign" aria-hidden="true">!</span>{faults === 1 ? '1 fault in the sheet' : `${faults} faults in the sheet`}</p>
      )}
      {build.proven ? <ProvenOf proven={build.proven} own={build.units} /> : build.worst ? <WorstOf worst={build.worst} own={build.units} /> : <p class="quiet">No ceilings before the sheet is in order.</p>}
      <Stages stage={build.stage} />
    </li>
  );
}

function WorstOf({ worst, own }: { worst: Worst; own: UnitChoice }) {
  const choice = unitsOf(own);
  const at = (degC: number): string => withUnit(degC, 'degC', choice);
  return (
    <div class="worst">
      <p class="big">{at(worst.ceiling_degC)}</p>
      <div>
        <p><Verdict holds={worst.holds} /> on its design day of {at(worst.day_degC)} ({change(worst.ceiling_degC - worst.day_degC, choice)})</p>
        <p>Worst case: {worst.title}; <strong>{worst.binding_title}</strong> gives way first.</p>
      </div>
    </div>
  );
}

/** After the runs the interval belongs to the answer. */
function ProvenOf({ proven, own }: { proven: ProvenCeiling; own: UnitChoice }) {
  const choice = unitsOf(own);
  const day = proven.design_ambient_degC;
  return (
    <div class="worst">
      <p class="big">{ceilingWords(proven, choice)}</p>
      <div>
        <p><Verdict holds={holdsOn(day, proven.interval90)} /> on its design day of {withUnit(day, 'degC', choice)}. After the runs, 90 of 100: {intervalWords(proven.interval90, choice)}</p>
        <p>Worst case: {proven.title}; <strong>{proven.binding_title}</strong> gives way first.</p>
      </div>
    </div>
  );
}

const STEPS: readonly (readonly [keyof Stage, string])[] = [
  ['sheet', 'sheet'], ['predicted', 'predicted'], ['commissioned', 'commissioned'], ['proven', 'proven'], ['signed', 'signed'],
];

function Stages({ stage }: { stage: Stage }) {
  return (
    <ol class="stages" aria-label="Where it stands">
      {STEPS.map(([key, word]) => (
        <li key={key} class={stage[key] ? 'done' : 'open'}>
          <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
            <rect x="2" y="2" width="16" height="16" rx="2" />
            {stage[key] && <path d="M5.500 10.500 9 14l5.500-8" />}
          </svg>
          {key === 'proven' && stage.proof_old ? 'proof is old' : word}
          <span class="unseen">{stage[key] ? ': done' : ': not yet'}</span>
        </li>
      ))}
    </ol>
  );
}
