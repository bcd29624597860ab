import type { MonitoringRowData } from '../monitoring-log-data';

/** What a log adds up to, counted while its rows go by. */
export class Tally {
  private readonly counts = { met: 0, missed: 0, undetermined: 0, 'not judged singly': 0 };
  private notMade = 0;
  private readonly names = new Map<string, Set<string>>();

  add(row: MonitoringRowData): void {
    if (row.kind === 'not done') {
      this.notMade += 1;
      return;
    }
    this.counts[row.verdict?.kind ?? 'not judged singly'] += 1;
    this.names.set(row.initials, (this.names.get(row.initials) ?? new Set()).add(row.by));
  }

  /** "212 met, 1 missed; 2 checks not made" */
  inWords(): string {
    const judged = Object.entries(this.counts).flatMap(([what, count]) => (count ? [`${count} ${what}`] : []));
    const notMade = this.notMade && `${this.notMade} ${this.notMade === 1 ? 'check' : 'checks'} not made`;
    return [judged.join(', '), notMade].filter(Boolean).join('; ') || 'No reading was taken in this period.';
  }

  /** Whose initials are whose. */
  initials(): string {
    const people = [...this.names].sort(([one], [other]) => one.localeCompare(other, 'en'));
    return people.map(([initials, names]) => `${initials} ${[...names].join(' or ')}`).join('; ');
  }
}
