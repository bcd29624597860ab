import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../../apps/api/src/project-root';
import { withLarder } from './larder/open-larder';
import { aCurve } from './measures/a-curve';
import { aStart } from './measures/a-start';
import { aTrace } from './measures/a-trace';
import { firstPage } from './measures/first-page';
import { formulas } from './measures/formulas';
import { lotRecords } from './measures/lot-records';
import { oneReading } from './measures/one-reading';
import type { Measured } from './report/figure';
import { describeMachine } from './report/machine';
import { table } from './report/table';

const measures: Record<string, () => Promise<Measured>> = {
  reading: () => withLarder(oneReading),
  trace: () => withLarder(aTrace),
  curve: aCurve,
  formulas,
  paper: lotRecords,
  start: aStart,
  page: firstPage,
};

const chosen = process.argv.slice(2);
const unknown = chosen.filter((name) => !(name in measures));
if (unknown.length > 0) throw new Error(`There is no measure ${unknown.join(', ')}: choose among ${Object.keys(measures).join(', ')}`);

const date = new Date().toISOString();
const machine = await describeMachine();
const measured: Measured[] = [];
for (const [name, measure] of Object.entries(measures)) {
  if (chosen.length > 0 && !chosen.includes(name)) continue;
  process.stderr.write(`Measuring: ${name} …\n`);
  measured.push(await measure());
}

const folder = join(projectRoot, 'bench-results');
const file = join(folder, `${date.replaceAll(':', '-')}.json`);
mkdirSync(folder, { recursive: true });
writeFileSync(file, `${JSON.stringify({ date, machine, measured }, null, 2)}\n`);
console.log(`\n${table(measured)}\n\n${Object.values(machine).join(' · ')} · ${date.slice(0, 10)}\n${file}`);
