import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { smallTargets } from './small-targets';

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa'];

/** What a person would stumble over on the page as it stands, at the width it has: nothing, on a good page. */
export async function faultsOfPage(page: Page): Promise<string[]> {
  return [...(await sideways(page)), ...(await page.evaluate(smallTargets)), ...(await barriers(page))];
}

/** Sideways scrolling of the whole page; a table may scroll in its own frame. */
export async function sideways(page: Page): Promise<string[]> {
  const [page_, sight] = await page.evaluate(() => [
    document.documentElement.scrollWidth,
    document.documentElement.clientWidth,
  ]);
  return page_ > sight ? [`the page is ${page_} px wide in a window of ${sight} px`] : [];
}

async function barriers(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(rules).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${target.join(' ')} ${failureSummary}`),
    );
}
