import type { Page } from '@playwright/test';
import { allWords } from '@larderbook/messages/all';

/** Words that stand in nearly every English sentence and in no Spanish one. */
const telling = /\b(the|this|that|these|and|with|from|was|were|are|what|which|who|yet|have|has|not|you|your|it|its|to be|of|by)\b/i;

const spoken = (language: 'en' | 'es') => new Set(Object.values(allWords).flatMap((words) => Object.values<string>(words[language])));
const spanish = spoken('es');
/** What a page would show of a message that was not translated: whole, where it takes nothing. */
const english = new Set([...spoken('en')].filter((text) => !spanish.has(text) && !text.includes('{')));

/** Zones of the clock are offered by the names the browser knows them by. */
const zones = Intl.supportedValuesOf('timeZone').map((zone) => zone.replaceAll('_', ' ').replaceAll('/', ' / '));

/**
 * What is on the page in English, seen or read out. What the server tells is left aside (`told`): names that people
 * typed, and what it says of a record.
 */
export async function englishOn(page: Page, told: Iterable<string>): Promise<string[]> {
  const texts = await page.evaluate(textsOf);
  const longestFirst = [...new Set([...told, ...zones])].filter((text) => text.length > 1).sort((a, b) => b.length - a.length);
  const own = (text: string) => longestFirst.reduce((rest, each) => rest.replaceAll(each, ' '), text).trim();
  return [...new Set(texts)].filter((text) => !longestFirst.includes(text) && (english.has(text) || telling.test(own(text))));
}

/** Runs in the page. */
function textsOf(): string[] {
  const found = [document.title];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const { parentElement, textContent } = walker.currentNode;
    if (parentElement && !parentElement.closest('script, style, noscript')) found.push(textContent ?? '');
  }
  for (const element of document.querySelectorAll('[aria-label], [title], [placeholder]'))
    for (const name of ['aria-label', 'title', 'placeholder']) found.push(element.getAttribute(name) ?? '');
  return found.map((text) => text.replace(/\s+/g, ' ').trim()).filter((text) => /\p{L}{2}/u.test(text));
}

/** Every string in what the server has replied to this page so far, and in what will come, also without its last stop. */
export function toldTo(page: Page): Set<string> {
  const told = new Set<string>();
  page.on('response', async (response) => {
    if (!response.url().includes('/api/')) return;
    for (const text of stringsIn(await response.json().catch(() => undefined)))
      for (const each of [text, text.replace(/\.$/, '')]) told.add(each.replace(/\s+/g, ' ').trim());
  });
  return told;
}

function stringsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsIn) : [];
}
