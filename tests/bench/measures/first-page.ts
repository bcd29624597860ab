import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { projectRoot } from '../../../apps/api/src/project-root';
import type { Measured } from '../report/figure';

const pages = join(projectRoot, 'apps/web/dist');
const kilobyte = 1000;

/** What a tablet has to fetch before the first page can be used: the entry of index.html and all that it loads ahead. */
export async function firstPage(): Promise<Measured> {
  const html = readFileSync(join(pages, 'index.html'), 'utf8');
  const scripts = addressesIn(html, /<(?:script type="module"|link rel="modulepreload")[^>]* (?:src|href)="([^"]+)"/g);
  const sheets = addressesIn(html, /<link rel="stylesheet"[^>]* href="([^"]+)"/g);
  const unit = 'kB';
  return {
    title: 'The first page, gzipped',
    figures: [
      { what: 'JavaScript', value: gzipped(scripts), unit, note: `${scripts.length} files` },
      { what: 'styles', value: gzipped(sheets), unit, note: `${sheets.length} files` },
    ],
  };
}

const addressesIn = (html: string, pattern: RegExp): string[] => [...html.matchAll(pattern)].map(([, address]) => address ?? '');

const gzipped = (addresses: string[]): number =>
  addresses.reduce((sum, address) => sum + gzipSync(readFileSync(join(pages, address)), { level: 9 }).length, 0) / kilobyte;
