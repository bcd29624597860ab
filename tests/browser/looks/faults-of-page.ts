import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { cutTexts } from './cut-texts';
import { smallTargets } from './small-targets';

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

/** What a person would stumble over on the page as it stands, at the width it has: nothing, on a good page. */
export async function faultsOfPage(page: Page): Promise<string[]> {
  return [...(await misfits(page)), ...(await barriers(page))];
}

/** What depends on the width: sideways scrolling of the whole page, texts that are cut, and what is too small to be tapped. */
export async function misfits(page: Page): Promise<string[]> {
  return [...(await sideways(page)), ...(await page.evaluate(cutTexts)), ...(await page.evaluate(smallTargets))];
}

/** A table may scroll in its own frame. */
async function sideways(page: Page): Promise<string[]> {
  const [width = 0, sight = 0] = await page.evaluate(() => [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
  return width > sight ? [`the page is ${width} px wide in a window of ${sight} px`] : [];
}

async function barriers(page: Page): Promise<string[]> {
  const axe = new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).withTags(rules);
  const { violations } = await axe.setLegacyMode().analyze(); // in the page itself: there are no frames
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')} ${failureSummary}`));
}
