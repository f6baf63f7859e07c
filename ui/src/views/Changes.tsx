import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Read, SheetDesk } from '../state/sheetDesk';
import { TroubleNotice } from './TroubleNotice';

export const changesSaid = (changed: number): string =>
  changed === 0 ? 'As saved' : changed === 1 ? '1 change, not saved' : `${changed} changes, not saved`;

/** What can be done with the changes to a sheet, and why it was not. */
export function Changes<R extends Read>({ desk, children }: { desk: SheetDesk<R>; children?: ComponentChildren }) {
  const { past, now, future } = desk.history.value;
  const changed = Object.keys(now).length;
  return (
    <>
      <div class="actions" role="group" aria-label="Changes">
        <button type="button" disabled={past.length === 0} aria-keyshortcuts="Control+Z" onClick={() => desk.undo()}>Undo</button>
        <button type="button" disabled={future.length === 0} aria-keyshortcuts="Control+Shift+Z" onClick={() => desk.redo()}>Redo</button>
        {children}
        <button type="button" class="main" disabled={changed === 0 || desk.saving.value} onClick={() => void desk.save()}>Save</button>
      </div>
      <TroubleNotice trouble={desk.trouble.value} />
      <TroubleNotice trouble={desk.unsaved.value} word="Save again" />
      {desk.conflict.value && (
        <div class="notice bad" role="alert">
          <p>{desk.conflict.value.message}</p>
          <div class="actions">
            <button type="button" onClick={() => void desk.settle(true)}>Read it again and lay my changes over it</button>
            <button type="button" onClick={() => void desk.settle(false)}>Read it again and throw my changes away</button>
          </div>
        </div>
      )}
    </>
  );
}

/** Plain typing is undone by the field itself. */
function typing(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement && target.dataset['typing'] !== undefined;
}

/** Undo and redo by their keys, wherever the focus is. */
export function useUndoKeys<R extends Read>(desk: SheetDesk<R>): void {
  useEffect(() => {
    const down = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== 'z' || typing(event.target)) {
        return;
      }
      event.preventDefault();
      if (event.shiftKey) {
        desk.redo();
      } else {
        desk.undo();
      }
    };
    window.addEventListener('keydown', down);
    return () => window.removeEventListener('keydown', down);
  }, [desk]);
}
