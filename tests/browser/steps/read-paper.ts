import { Readable } from 'node:stream';
import { expect, type Locator, type Page } from '@playwright/test';
import { readBack } from '../../../packages/documents/src/read-back.test-data';

/** Fetches the PDF that a link opens, as whoever is signed in, and reads its words. */
export async function readPaper(page: Page, link: Locator): Promise<string> {
  const reply = await page.request.get((await link.getAttribute('href')) ?? '');
  expect(reply.headers()['content-type']).toContain('application/pdf');
  const { text } = await readBack(Readable.from([await reply.body()]));
  return text;
}
