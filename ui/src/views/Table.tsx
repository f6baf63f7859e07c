import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** A region that is moved sideways where it is wider than the screen, and then says so. */
export function Wide({ label, children }: { label: string; children: ComponentChildren }) {
  const ref = useRef<HTMLDivElement>(null);
  const [beyond, setBeyond] = useState(false);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) {
      return undefined;
    }
    const look = (): void => setBeyond(element.scrollWidth > element.clientWidth + 1);
    const observer = new ResizeObserver(look);
    observer.observe(element);
    if (element.firstElementChild) {
      observer.observe(element.firstElementChild);
    }
    look();
    return () => observer.disconnect();
  }, []);
  return (
    <>
      {beyond && <p class="hint sideways">Move it sideways: it goes on to the right.</p>}
      <div class={`wide-table${beyond ? ' beyond' : ''}`} ref={ref} tabIndex={0} role="region" aria-label={label}>{children}</div>
    </>
  );
}

export interface TableRow {
  readonly key: string;
  /** One for each word of the head, the first names the row. */
  readonly cells: readonly ComponentChildren[];
}

interface Props {
  readonly label: string;
  /** What stands over each column; one in brackets is for ears alone. */
  readonly head: readonly string[];
  readonly rows: readonly TableRow[];
  readonly kind?: string;
}

const heard = (word: string): boolean => word.startsWith('(');

/** A table; on a narrow screen every row is a block of its own, each value behind its word. */
export function Table({ label, head, rows, kind = '' }: Props) {
  // Roles are said, since a browser forgets them where rows are laid out as blocks.
  return (
    <Wide label={label}>
      <table class={`rows-stack ${kind}`} role="table">
        <thead role="rowgroup">
          <tr role="row">
            {head.map((word) => (
              <th key={word} scope="col" role="columnheader">{heard(word) ? <span class="unseen">{word.slice(1, -1)}</span> : word}</th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {rows.map((row) => (
            <tr key={row.key} role="row">
              {row.cells.map((cell, i) => {
                const word = head[i] ?? '';
                return i === 0
                  ? <th key={word} scope="row" role="rowheader">{cell}</th>
                  : <td key={word} role="cell" data-word={heard(word) ? undefined : word}>{cell}</td>;
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </Wide>
  );
}
