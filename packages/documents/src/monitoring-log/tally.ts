import type { MonitoredReadingData, MonitoringRowData } from '../monitoring-log-data';
import type { SayOnPaper } from '../page/telling';

const alone = ['counted-met', 'counted-missed', 'counted-undetermined', 'counted-not-judged'] as const;
const ofCurves = ['curves-met', 'curves-missed', 'curves-undetermined', 'readings-of-curves'] as const;
const struck = ['counted-voided', 'counted-corrected'] as const;
type Counted = (typeof alone | typeof ofCurves | typeof struck)[number] | 'checks-not-made';

function whatOf({ struck: how, isOfCurve, verdict }: MonitoredReadingData): Counted {
  if (how) return `counted-${how}`;
  if (isOfCurve) return 'readings-of-curves';
  return verdict ? `counted-${verdict.kind}` : 'counted-not-judged';
}

/** Counts while the rows go by. */
export class Tally {
  private readonly counts = new Map<Counted, number>();
  private readonly names = new Map<string, Set<string>>();

  add(row: MonitoringRowData): void {
    if (row.kind === 'not done') return this.count('checks-not-made');
    if (row.kind === 'curve') return this.count(`curves-${row.verdict.kind}`);
    this.count(whatOf(row));
    this.names.set(row.initials, (this.names.get(row.initials) ?? new Set()).add(row.by));
  }

  /** "212 met, 1 missed; 3 curves met, of 66 readings of curves; 2 checks not made" */
  inWords(say: SayOnPaper): string {
    const told = (code: Counted) => (this.of(code) > 0 ? [say(code, { count: this.of(code) } as never)] : []);
    const all = [alone, ofCurves, ['checks-not-made'], struck].map((codes) => (codes as Counted[]).flatMap(told).join(', '));
    return all.filter(Boolean).join('; ') || say('no-reading-taken');
  }

  initials(): string {
    const people = [...this.names].sort(([one], [other]) => one.localeCompare(other, 'en'));
    return people.map(([initials, names]) => `${initials} ${[...names].join(' or ')}`).join('; ');
  }

  private count(what: Counted): void {
    this.counts.set(what, this.of(what) + 1);
  }

  private of(what: Counted): number {
    return this.counts.get(what) ?? 0;
  }
}
