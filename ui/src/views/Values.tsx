import { useSignal } from '@preact/signals';
import type { Finding } from '../api/types';
import type { Desk } from '../state/desk';
import { Said, TypedField } from './TypedField';

type Show = 'all' | 'typed' | 'filled' | 'changed' | 'remarked';

interface Entry {
  readonly key: string;
  readonly typed: boolean;
  readonly value: string;
  readonly hint: string | undefined;
  readonly changed: boolean;
}

/** Every single value of the sheet in the units that were chosen, and what was filled in for those left open. */
export function Values({ desk }: { desk: Desk }) {
  const wanted = useSignal('');
  const show = useSignal<Show>('all');
  const words = wanted.value.toLowerCase().split(/\s+/).filter(Boolean);
  const all = entries(desk);
  const fits = (e: Entry): boolean => {
    switch (show.value) {
      case 'typed': return e.typed;
      case 'filled': return !e.typed;
      case 'changed': return e.changed;
      case 'remarked': return about(desk.findings.value, e.key).length > 0;
      default: return true;
    }
  };
  const found = all.filter((e) => fits(e) && words.every((w) => `${e.key} ${e.value}`.toLowerCase().includes(w)));
  return (
    <section class="card values" aria-labelledby="values-title">
      <div class="values-head">
        <h2 id="values-title">All values of the sheet</h2>
        <label class="search show">
          <span>Show</span>
          <select value={show.value} onChange={(e) => { show.value = e.currentTarget.value as Show; }}>
            <option value="all">all</option>
            <option value="typed">typed</option>
            <option value="filled">filled in</option>
            <option value="changed">changed</option>
            <option value="remarked">with faults or remarks</option>
          </select>
        </label>
        <label class="search">
          <span>Search</span>
          <input type="search" value={wanted.value} onInput={(e) => { wanted.value = e.currentTarget.value; }} />
        </label>
      </div>
      <p class="count" role="status">{found.length === all.length ? `${all.length} values` : `${found.length} of ${all.length} values`}</p>
      {grouped(found).map(([block, list]) => (
        <div key={block} class="block">
          <h3>{block}</h3>
          <div class="said"><Said findings={ofBlock(desk.findings.value, block, all)} /></div>
          <div class="fields">
            {list.map((e) => (
              <TypedField
                key={e.key} id={`value:${e.key}`} label={e.key} value={e.value} hint={e.hint} changed={e.changed}
                findings={about(desk.findings.value, e.key)}
                like={desk.inChosenUnits(e.key, desk.saved.value.get(e.key) ?? desk.assumed.value.get(e.key) ?? e.value)}
                set={(text) => desk.change({ [e.key]: text })}
              />
            ))}
          </div>
        </div>
      ))}
      <Another desk={desk} />
    </section>
  );
}

/** A value the sheet does not have yet, by its key. */
function Another({ desk }: { desk: Desk }) {
  const key = useSignal('');
  const value = useSignal('');
  const ready = key.value.trim() !== '' && value.value.trim() !== '';
  return (
    <form
      class="another"
      onSubmit={(event) => {
        event.preventDefault();
        if (ready) {
          desk.change({ [key.value.trim()]: value.value.trim() });
          key.value = '';
          value.value = '';
        }
      }}
    >
      <h3>Another value</h3>
      <div class="fields">
        <div class="field">
          <label for="another-key">key, as in stack.flap_area</label>
          <input id="another-key" autocomplete="off" autocapitalize="off" spellcheck={false} value={key.value} onInput={(e) => { key.value = e.currentTarget.value; }} />
        </div>
        <div class="field">
          <label for="another-value">value with its unit, as in 120 cm2</label>
          <input id="another-value" autocomplete="off" autocapitalize="off" spellcheck={false} value={value.value} onInput={(e) => { value.value = e.currentTarget.value; }} />
        </div>
        <button type="submit" class="set" disabled={!ready}>Set</button>
      </div>
    </form>
  );
}

function entries(desk: Desk): readonly Entry[] {
  const build = desk.build.value;
  const changes = desk.changes.value;
  const typed = (build?.values ?? []).map((v): Entry => ({
    key: v.key, typed: true, value: changes[v.key] ?? v.typed, hint: undefined, changed: v.key in changes,
  }));
  const known = new Set(typed.map((e) => e.key));
  const open = (build?.assumptions ?? []).filter((a) => !known.has(a.key)).map((a): Entry => ({
    key: a.key,
    typed: a.key in changes,
    value: changes[a.key] ?? a.value,
    hint: a.key in changes ? `instead of ${desk.inChosenUnits(a.key, a.value)}, filled in: ${a.reason}` : `filled in: ${desk.inChosenUnits(a.key, a.value)}, because ${a.reason}`,
    changed: a.key in changes,
  }));
  for (const entry of open) {
    known.add(entry.key);
  }
  const turned = (e: Entry): Entry => {
    const value = desk.inChosenUnits(e.key, e.value);
    return value === e.value ? e : { ...e, value, hint: e.typed ? [`typed as ${e.value}`, e.hint].filter(Boolean).join('; ') : e.hint };
  };
  const fresh = Object.entries(changes).filter(([key]) => !known.has(key)).map(([key, value]): Entry => ({
    key, typed: true, value, hint: 'not in the saved sheet', changed: true,
  }));
  for (const entry of fresh) {
    known.add(entry.key);
  }
  const isBlock = (key: string): boolean => [...known].some((k) => k.startsWith(`${key}.`));
  const missing = [...new Set(desk.findings.value.map((f) => f.sheet_key ?? ''))]
    .filter((key) => key.includes('.') && !known.has(key) && !isBlock(key))
    .map((key): Entry => ({ key, typed: true, value: '', hint: undefined, changed: false }));
  return [...[...typed, ...open, ...fresh].map(turned), ...missing];
}

function grouped(list: readonly Entry[]): readonly (readonly [string, readonly Entry[]])[] {
  const blocks = new Map<string, Entry[]>();
  for (const entry of list) {
    const block = entry.key.includes('.') ? entry.key.slice(0, entry.key.indexOf('.')) : 'sheet';
    blocks.set(block, [...(blocks.get(block) ?? []), entry]);
  }
  return [...blocks];
}

/** What is said about a block as a whole, or about a part of it that has no field. */
const ofBlock = (findings: readonly Finding[], block: string, all: readonly Entry[]): readonly Finding[] =>
  findings.filter((f) => (f.sheet_key === block || f.sheet_key?.startsWith(`${block}.`)) && all.every((e) => e.key !== f.sheet_key));

const about = (findings: readonly Finding[], key: string): readonly Finding[] => findings.filter((f) => f.sheet_key === key);
