import { signal } from '@preact/signals';
import type { Answer, Build, Change, FaultyAnswer, Finding, Saved, Shop } from './types';

/** True while this device has not been told the code of the server. */
export const unpaired = signal(false);

/** A refusal of the server, or no server at all, as a sentence for people. */
export class ServerError extends Error {}

/** No server at all, for now. */
export class AwayError extends ServerError {
  constructor() {
    super('Hotday does not answer. Is it still running on this machine?');
  }
}

export interface Refusal {
  readonly error?: string;
  readonly message?: string;
  readonly findings?: readonly Finding[];
}

const said = ({ message, findings }: Refusal): string | undefined => message ?? findings?.map((f) => f.message).join('; ');

export async function ask(path: string, init?: RequestInit): Promise<Response> {
  try {
    return await fetch(`api/${path}`, { cache: 'no-store', ...init });
  } catch {
    throw new AwayError();
  }
}

export async function body<T>(response: Response): Promise<T> {
  try {
    return (await response.json()) as T;
  } catch {
    throw new ServerError(`The answer cannot be read (status ${response.status}).`);
  }
}

export async function good<T>(response: Response): Promise<T> {
  if (!response.ok) {
    const refusal = await body<Refusal>(response);
    if (refusal.error === 'pair') {
      unpaired.value = true;
    }
    throw new ServerError(said(refusal) ?? `Refused (status ${response.status}).`);
  }
  return body<T>(response);
}

/** The disk does not take it; nothing is wrong with what was sent. */
export const NOT_WRITTEN = 507;

export const notWritten = async (response: Response): Promise<string> => (await body<Refusal>(response)).message ?? 'The disk does not take it.';

export const build = (id: string): string => `builds/${encodeURIComponent(id)}`;

export const sending = (method: string, content: unknown): RequestInit => ({
  method,
  headers: { 'Content-Type': 'application/json' },
  body: JSON.stringify(content),
});

/** Tells the server the code that it shows on its own machine. */
export async function pair(code: string): Promise<void> {
  await good(await ask('pair', sending('POST', { code })));
  unpaired.value = false;
}

export async function readShop(): Promise<Shop> {
  return good(await ask('shop'));
}

export async function readBuild(id: string): Promise<Build> {
  return good(await ask(build(id)));
}

/** What is changed, as it is sent: an empty value takes its key out of the sheet. */
export const sent = (changes: readonly Change[]): readonly object[] =>
  changes.map(({ key, value }) => (value === '' ? { key, out: true } : { key, value }));

export async function tryChanges(id: string, changes: readonly Change[]): Promise<Answer> {
  return good(await ask(`${build(id)}/try`, sending('POST', { changes })));
}

export async function saveChanges(id: string, version: string, changes: readonly Change[]): Promise<Saved> {
  const response = await ask(build(id), sending('PUT', { version, changes: sent(changes) }));
  if (response.status === 409) {
    const refusal = await body<Refusal>(response);
    return { kind: 'changed-elsewhere', message: refusal.message ?? 'The sheet was changed elsewhere.' };
  }
  if (response.status === 422) {
    return { kind: 'faults', findings: (await body<FaultyAnswer>(response)).findings };
  }
  if (response.status === NOT_WRITTEN) {
    return { kind: 'not-written', message: await notWritten(response) };
  }
  const saved = await good<{ version: string; answer: Answer }>(response);
  return { kind: 'saved', ...saved };
}
