import { signal } from '@preact/signals';
import { pair, ServerError } from '../api/client';

const trouble = signal<string | null>(null);

async function send(code: string): Promise<void> {
  try {
    await pair(code);
    trouble.value = null;
  } catch (reason) {
    trouble.value = reason instanceof ServerError ? reason.message : String(reason);
  }
}

/** A device of the workshop that the server does not know yet. */
export function PairView() {
  return (
    <form class="card pair" onSubmit={(event) => {
      event.preventDefault();
      void send(String(new FormData(event.currentTarget).get('code')));
    }}>
      <h1>Pair this device</h1>
      <p>Type the eight digits that Hotday shows on the machine it runs on.</p>
      <label>
        <span>Code</span>
        <input name="code" inputMode="numeric" autocomplete="off" required maxLength={12} aria-describedby={trouble.value ? 'pair-trouble' : undefined} />
      </label>
      {trouble.value && <p id="pair-trouble" class="bad" role="alert">{trouble.value}</p>}
      <button type="submit" class="main">Pair</button>
    </form>
  );
}
