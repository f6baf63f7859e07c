import { useSignal } from '@preact/signals';
import type { Finding } from '../api/types';
import type { Desk } from '../state/desk';
import { TypedField } from './TypedField';

type Show = 'all' | 'typed' | 'filled' | 'changed' | 'remarked';

interface Entry {
  readonly key: string;
  readonly typed: boolean;
  readonly value: string;
  readonly hint: string | undefined;
  readonly changed: boolean;
}

/** Every single value of the sheet, as typed, and what was filled in for those left open. */
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
          <div class="fields">
            {list.map((e) => (
              <TypedField
                key={e.key} id={`value:${e.key}`} label={e.key} value={e.value} hint={e.hint} changed={e.changed}
                findings={about(desk.findings.value, e.key)}
                like={desk.saved.value.get(e.key) ?? desk.assumed.value.get(e.key) ?? e.value}
                set={(text) => desk.change({ [e.key]: text })}
              />
            ))}
          </div>
        </div>
      ))}
    </section>
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
    hint: a.key in changes ? `instead of ${a.value}, filled in: ${a.reason}` : `filled in: ${a.value}, because ${a.reason}`,
    changed: a.key in changes,
  }));
  for (const entry of open) {
    known.add(entry.key);
  }
  const fresh = Object.entries(changes).filter(([key]) => !known.has(key)).map(([key, value]): Entry => ({
    key, typed: true, value, hint: 'not in the saved sheet', changed: true,
  }));
  return [...typed, ...open, ...fresh];
}

function grouped(list: readonly Entry[]): readonly (readonly [string, readonly Entry[]])[] {
  const blocks = new Map<string, Entry[]>();
  for (const entry of list) {
    const block = entry.key.includes('.') ? entry.key.slice(0, entry.key.indexOf('.')) : 'sheet';
    blocks.set(block, [...(blocks.get(block) ?? []), entry]);
  }
  return [...blocks];
}

const about = (findings: readonly Finding[], key: string): readonly Finding[] => findings.filter((f) => f.sheet_key === key);
