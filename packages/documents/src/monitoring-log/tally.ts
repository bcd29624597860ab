import type { VerdictKind } from '@larderbook/haccp';
import type { MonitoringRowData } from '../monitoring-log-data';

const kinds: VerdictKind[] = ['met', 'missed', 'undetermined'];

/** What a log adds up to, counted while its rows go by. */
export class Tally {
  private readonly counts = new Map<string, number>();
  private readonly names = new Map<string, Set<string>>();

  add(row: MonitoringRowData): void {
    if (row.kind === 'not done') return this.count('not made');
    if (row.kind === 'curve') return this.count(`curve ${row.verdict.kind}`);
    this.count(row.struck ?? (row.isOfCurve ? 'of a curve' : (row.verdict?.kind ?? 'not judged')));
    this.names.set(row.initials, (this.names.get(row.initials) ?? new Set()).add(row.by));
  }

  /** "212 met, 1 missed; 3 curves met, of 66 readings; 2 checks not made" */
  inWords(): string {
    const singly = this.said([...kinds, 'not judged'].map((kind) => [kind, kind]));
    const curves = this.said(
      kinds.map((kind) => [`curve ${kind}`, kind]),
      'curve',
    );
    const readings = this.of('of a curve');
    const ofCurves = readings > 0 && `${curves ? `${curves}, of ` : ''}${counted(readings, 'reading')} of curves`;
    const notMade = this.of('not made');
    const struck = this.said([
      ['voided', 'voided'],
      ['corrected', 'corrected out of this log'],
    ]);
    const all = [singly, ofCurves || curves, notMade > 0 && `${counted(notMade, 'check')} not made`, struck];
    return all.filter(Boolean).join('; ') || 'No reading was taken in this period.';
  }

  /** Whose initials are whose. */
  initials(): string {
    const people = [...this.names].sort(([one], [other]) => one.localeCompare(other, 'en'));
    return people.map(([initials, names]) => `${initials} ${[...names].join(' or ')}`).join('; ');
  }

  private count(what: string): void {
    this.counts.set(what, this.of(what) + 1);
  }

  private of(what: string): number {
    return this.counts.get(what) ?? 0;
  }

  private said(asked: [key: string, word: string][], thing?: string): string {
    const found = asked.filter(([key]) => this.of(key) > 0);
    return found.map(([key, word]) => `${thing ? counted(this.of(key), thing) : this.of(key)} ${word}`).join(', ');
  }
}

const counted = (count: number, thing: string) => `${count} ${thing}${count === 1 ? '' : 's'}`;
