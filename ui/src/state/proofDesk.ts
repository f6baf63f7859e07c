import { computed, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import { readBuild } from '../api/client';
import { readProof, signOff } from '../api/proofClient';
import type { Job, ProofKept } from '../api/proofTypes';
import { rolesOf, suggested, withRole, type Role, type Roles } from '../lib/roles';
import { listen } from './events';
import { followJobs, jobs, start } from './jobs';
import { followRuns, runs } from './runs';
import { suggestUnits } from './settings';
import { troubleOf, type Trouble } from './trouble';

const rolesName = (id: string): string => `hotday.roles.${id}`;

/** The proof of one build: which recordings it takes, the work, and what came out last. */
export class ProofDesk {
  readonly title: Signal<string>;
  readonly note: Signal<string> = signal('');
  /** Undefined while it is not known whether there is one. */
  readonly proof: Signal<ProofKept | null | undefined> = signal(undefined);
  readonly trouble: Signal<Trouble | null> = signal(null);
  /** The recording whose columns are looked at. */
  readonly opened: Signal<string | null> = signal(null);
  readonly oil: Signal<boolean> = signal(false);
  readonly signing: Signal<boolean> = signal(false);

  private readonly picked: Signal<Roles>;

  readonly roles: ReadonlySignal<Roles> = computed(() => {
    const names = (runs.value ?? []).map((r) => r.name);
    return rolesOf(names, this.picked.value, suggested(this.id, names, this.proof.value ?? null));
  });
  readonly job: ReadonlySignal<Job | undefined> = computed(() =>
    jobs.value.find((j) => j.kind === 'prove' && j.build === this.id),
  );

  constructor(readonly id: string) {
    this.title = signal(id);
    this.picked = signal(keptRoles(id));
  }

  /** Follows the server until the answer is called. */
  follow(): () => void {
    followJobs();
    followRuns();
    const ends = [
      listen('joined', () => void this.load().then(() => this.name())),
      listen('proof', ({ build }) => build === this.id && void this.load()),
      listen('sheet', ({ build }) => build === this.id && void this.load()),
      listen('runs', () => void this.load()),
    ];
    return () => ends.forEach((end) => end());
  }

  pick(name: string, role: Role): void {
    this.picked.value = { ...this.picked.value, [name]: role };
    try {
      window.localStorage.setItem(rolesName(this.id), JSON.stringify(this.picked.value));
    } catch {
      // A browser that keeps nothing still proves.
    }
  }

  async prove(): Promise<void> {
    const roles = this.roles.value;
    await start({
      kind: 'prove',
      build: this.id,
      fit: withRole(roles, 'fit'),
      predict: withRole(roles, 'predict'),
      observe_oil: this.oil.value,
      seed: 1,
    });
  }

  async sign(): Promise<void> {
    const pdf = this.proof.value?.pdf;
    if (pdf === undefined) {
      return;
    }
    this.signing.value = true;
    try {
      await signOff(this.id, pdf);
      this.trouble.value = null;
      await this.load();
    } catch (reason) {
      this.trouble.value = { ...troubleOf(reason, () => void this.sign()), away: false };
    } finally {
      this.signing.value = false;
    }
  }

  async load(): Promise<void> {
    try {
      const next = await readProof(this.id);
      const old = this.proof.value;
      // The same proof stays the same object: pictures made of it need not be made again.
      this.proof.value = old && next && old.pdf === next.pdf ? { ...old, current: next.current, signed: next.signed } : next;
      this.trouble.value = null;
    } catch (reason) {
      this.trouble.value = troubleOf(reason, () => void this.load());
    }
  }

  private async name(): Promise<void> {
    try {
      const build = await readBuild(this.id);
      suggestUnits(build.units);
      this.title.value = build.name;
      this.note.value = build.note;
    } catch (reason) {
      this.trouble.value = troubleOf(reason, () => void this.load());
    }
  }
}

function keptRoles(id: string): Roles {
  try {
    return (JSON.parse(window.localStorage.getItem(rolesName(id)) ?? '{}') as Roles | null) ?? {};
  } catch {
    return {};
  }
}
