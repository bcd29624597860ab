import { allWords } from '@larderbook/messages/all';
import { expect, test } from 'vitest';
import { deviationReport } from './deviation-report';
import { aDeviationReport } from './deviation-report.test-data';
import { lotRecord } from './lot-record';
import { aLotRecord } from './lot-record.test-data';
import { monitoringLog } from './monitoring-log';
import { aMonitoringLog } from './monitoring-log.test-data';
import { planPaper } from './plan-paper';
import { aPlanPaper } from './plan-paper.test-data';
import { readBack, type FoundDocument } from './read-back.test-data';
import { aSheet } from './samples.test-data';

const sheet = aSheet({ language: 'es' });
const papers: Record<string, [data: object, print: () => PDFKit.PDFDocument]> = {
  'lot record': [aLotRecord(), () => lotRecord({ ...aLotRecord(), sheet })],
  'monitoring log': [aMonitoringLog(), () => monitoringLog({ ...aMonitoringLog(), sheet })],
  'deviation report': [aDeviationReport(), () => deviationReport({ ...aDeviationReport(), sheet })],
  'HACCP plan': [aPlanPaper(), () => planPaper({ ...aPlanPaper(), sheet })],
};

const places = ['paper-sheet', 'paper-lot', 'paper-log', 'paper-plan', 'paper-figure'] as const;
/** What an English paper says without figures: each text that Spanish says otherwise. */
const english = places.flatMap((place) => {
  const spanish: Record<string, string> = allWords[place].es;
  return Object.entries(allWords[place].en).flatMap(([code, text]) => (text.includes('{') || text === spanish[code] ? [] : [text]));
});

/** What is printed of the data stays as somebody wrote it. A sentence anywhere; a word where it stands by itself, as heads of columns and labels do. */
const foundIn = ({ text, pages }: FoundDocument, data: object): string[] => {
  const written = JSON.stringify(data);
  const alone = new Set(pages.flatMap(({ items }) => items.map((item) => item.text.trim())));
  return english.filter((said) => !written.includes(said) && (said.includes(' ') ? text.includes(said) : alone.has(said)));
};

test.each(Object.entries(papers))('a %s in Spanish says no word of the English one', async (_name, [data, print]) => {
  const found = await readBack(print());
  expect(foundIn(found, data)).toEqual([]);
  expect(found.language).toBe('es');
  expect(found.text).toContain('Página 1 de ');
  expect(found.text).toContain(allWords['paper-sheet'].es['record-caution']);
});

test('and an English one says them, so that the search would find them', async () => {
  const found = foundIn(await readBack(lotRecord(aLotRecord())), aLotRecord());
  expect(found).toEqual(expect.arrayContaining(['Pre-shipment review', 'Package code', 'Hazard']));
});
