import { useEffect } from 'preact/hooks';
import { whenBack, type Trouble } from '../state/trouble';

/** What failed, and a way to try it again; by itself once a server that was away is back. */
export function TroubleNotice({ trouble, word = 'Try again' }: { trouble: Trouble | null; word?: string }) {
  useEffect(() => (trouble?.away ? whenBack(trouble.again) : undefined), [trouble]);
  return trouble && (
    <div class="notice bad" role="alert">
      <p>{trouble.message}{trouble.away && ' It is asked again by itself as soon as it is back; what you changed stays here.'}</p>
      <button type="button" onClick={() => trouble.again()}>{word}</button>
    </div>
  );
}
