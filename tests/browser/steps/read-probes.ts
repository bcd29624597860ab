import { expect, type Page } from '@playwright/test';
import { keyIn } from './key-in';
import { speaking } from './words';

/** A round at the smokehouse: so many minutes after the day began, one temperature for each probe. */
export type Round = { after: number; degrees: string[] };

/** Readings of one stage in the dialog that is open, round by round, while the clock on the wall goes on. */
export async function readProbes(page: Page, dayBegan: number, rounds: Round[], speaks = speaking('en')): Promise<void> {
  const [say, sayShared] = [speaks('lot-forms'), speaks('shared')];
  const dialog = page.getByRole('dialog');
  for (const [i, { after, degrees }] of rounds.entries()) {
    await page.clock.setSystemTime(dayBegan + after * 60_000); // it runs on within the round, and never back
    for (const [j, figures] of degrees.entries()) {
      if (i + j > 0) await page.getByRole('button', { name: say('another-reading') }).click();
      await keyIn(page, say('measured-temperature'), figures, sayShared('save'));
      await expect(dialog.getByText(sayShared('saved'))).toBeVisible();
    }
  }
  await page.getByRole('button', { name: sayShared('done') }).click();
}
