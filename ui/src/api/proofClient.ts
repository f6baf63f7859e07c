import { ask, body, build, good, NOT_WRITTEN, notWritten, sending, ServerError, type Refusal } from './client';
import type { Job, MapSaved, MapWish, ProofKept, ProveWish, Remark, Run, RunDetail, Samples, StudyWish } from './proofTypes';

const run = (name: string): string => `runs/${encodeURIComponent(name)}`;

export interface Runs {
  readonly runs: readonly Run[];
  /** Larger ones are not taken. */
  readonly largest_bytes: number;
}

export async function readRuns(): Promise<Runs> {
  return good(await ask('runs'));
}

export async function readRun(name: string): Promise<RunDetail> {
  return good(await ask(run(name)));
}

/** What a map would read, without writing it. */
export async function tryMap(name: string, wish: MapWish): Promise<RunDetail> {
  return good(await ask(`${run(name)}/map`, sending('POST', wish)));
}

export async function saveMap(name: string, wish: MapWish): Promise<MapSaved> {
  const response = await ask(`${run(name)}/map`, sending('PUT', wish));
  if (response.status === 409) {
    const refusal = await body<Refusal>(response);
    return { kind: 'changed-elsewhere', message: refusal.message ?? 'The map was changed elsewhere.' };
  }
  if (response.status === 422) {
    return { kind: 'faults', findings: (await body<{ findings?: readonly Remark[] }>(response)).findings ?? [] };
  }
  if (response.status === NOT_WRITTEN) {
    return { kind: 'not-written', message: await notWritten(response) };
  }
  return { kind: 'saved', run: await good<RunDetail>(response) };
}

/** Little-endian: a float64 count, as many float64 times in s, as many float32 values. */
export async function readTrace(name: string, channel: string): Promise<Samples> {
  const response = await ask(`${run(name)}/trace/${encodeURIComponent(channel)}`);
  if (!response.ok) {
    await good(response);
  }
  const bytes = await response.arrayBuffer();
  const count = bytes.byteLength >= 8 ? new DataView(bytes).getFloat64(0, true) : -1;
  if (bytes.byteLength !== 8 + 12 * count) {
    throw new ServerError('The trace came incomplete.');
  }
  return {
    unit: response.headers.get('X-Unit') ?? '',
    time_s: new Float64Array(bytes, 8, count),
    values: new Float32Array(bytes, 8 + 8 * count, count),
  };
}

export async function readJobs(): Promise<readonly Job[]> {
  return (await good<{ jobs: readonly Job[] }>(await ask('jobs'))).jobs;
}

export async function startJob(wish: ProveWish | StudyWish): Promise<Job> {
  return good(await ask('jobs', sending('POST', wish)));
}

/** Of a job that is done; its kind says what it is. */
export async function readResult<T>(id: string): Promise<T> {
  return good(await ask(`jobs/${encodeURIComponent(id)}/result`));
}

export async function cancelJob(id: string): Promise<Job> {
  return good(await ask(`jobs/${encodeURIComponent(id)}`, sending('DELETE', {})));
}

/** The last proof of a build, or null where there is none yet. */
export async function readProof(id: string): Promise<ProofKept | null> {
  const response = await ask(`${build(id)}/proof`);
  if (response.status === 204) {
    return null;
  }
  return good(response);
}

export async function signOff(id: string, pdf: string): Promise<void> {
  await good(await ask(`${build(id)}/signoff`, sending('POST', { proof: pdf })));
}

export const pdfLink = (id: string): string => `api/${build(id)}/proof.pdf`;

export type Uploaded =
  | { readonly kind: 'taken'; readonly run: Run }
  | { readonly kind: 'refused'; readonly message: string; readonly findings: readonly Remark[] };

/** fetch cannot tell how much of a request has gone out. */
export function upload(file: File, progress: (share: number) => void, stop: AbortSignal): Promise<Uploaded> {
  return new Promise((resolve) => {
    const request = new XMLHttpRequest();
    request.open('POST', `api/runs?file=${encodeURIComponent(file.name)}`);
    request.setRequestHeader('Content-Type', 'application/octet-stream');
    request.upload.onprogress = (event) => progress(event.total > 0 ? event.loaded / event.total : 0);
    request.onload = () => resolve(uploaded(request));
    request.onerror = () => resolve(refused('Hotday does not answer, or stopped reading the file.'));
    request.onabort = () => resolve(refused('Stopped; nothing was taken.'));
    stop.addEventListener('abort', () => request.abort());
    request.send(file);
  });
}

const refused = (message: string, findings: readonly Remark[] = []): Uploaded => ({ kind: 'refused', message, findings });

function uploaded(request: XMLHttpRequest): Uploaded {
  const said = parsed(request.responseText);
  if (request.status === 200 || request.status === 201) {
    return { kind: 'taken', run: said as unknown as Run };
  }
  const findings = (said['findings'] ?? []) as readonly Remark[];
  return refused(typeof said['message'] === 'string' ? said['message'] : findings.length > 0 ? 'Not taken.' : `Refused (status ${request.status}).`, findings);
}

function parsed(text: string): Record<string, unknown> {
  try {
    return JSON.parse(text) as Record<string, unknown>;
  } catch {
    return {};
  }
}
