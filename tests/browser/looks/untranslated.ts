import type { Page } from '@playwright/test';
import { stringsIn } from './strings-in';
import { amounts, printed, typed } from './typed-by-people';

/** What people typed and sources print, of what the server has replied to a page so far and of what will come. */
export function dataTo(page: Page): Set<string> {
  const told = new Set(amounts);
  page.on('response', async (response) => {
    if (!response.url().includes('/api/')) return;
    for (const text of dataIn(await response.json().catch(() => undefined))) told.add(text);
  });
  return told;
}

/** What people typed and sources print, of a reply of the server. */
export const dataIn = (reply: unknown): string[] =>
  stringsIn(reply)
    .filter(({ path }) => [...typed, ...printed].some((where) => where.test(path)))
    .map(({ text }) => text.replace(/\s+/g, ' ').trim());

/** What stands on a page, seen or read out, without a message that says it: nothing, on a page that is translated. */
export async function untranslatedOn(page: Page, data: Iterable<string>): Promise<string[]> {
  const { flowing, apart } = await page.evaluate(textsOf);
  return untranslatedIn([flowing, ...apart], data);
}

/** The same of texts: names of units, days and what is data stands outside the brackets of messages. */
export function untranslatedIn(texts: readonly string[], data: Iterable<string>): string[] {
  const known = [...new Set([...data, ...ours])].filter((text) => text.length > 1).sort((a, b) => b.length - a.length);
  const isKnown = (text: string) => known.some((each) => each.includes(text));
  const left = texts.flatMap(outsideMessages).map((text) => known.reduce((rest, each) => rest.replaceAll(each, ' '), text));
  const unsaid = left.filter((text) => !isKnown(text.replace(/…$/, '').trim())); // a drawing breaks names and shortens them
  return [...new Set(unsaid)].filter((text) => /\p{L}{2}/u.test(text.replace(figures, ' ')));
}

/** Larderbook’s own name, languages by theirs, and zones of the clock as the browser knows them. */
const zones = Intl.supportedValuesOf('timeZone').map((zone) => zone.replaceAll('_', ' ').replaceAll('/', ' / '));
const ours = ['Larderbook', 'English', 'Español', ...zones];

const unit =
  '(?:lb|oz|kg|g|mg|in|cm|mm|m|ft|gal|min|h|s|ms|ppm|ppb|log₁₀|log10|log|°[CF](?:·h)?|hPa|inHg|pH|aw|cfu/g|UFC/g|mg/kg|días?|horas?|kPa|PDF)';
const month = '(?:ene|feb|mar|abr|may|jun|jul|ago|sept|oct|nov|dic)';
const weekday = '(?:lun|mar|mié|jue|vie|sáb|dom)';
/** A figure with its unit, a unit alone, a day, a time, a hash. */
const figures = new RegExp(
  [
    String.raw`(?:${weekday}, )?\d{1,2} (?:de )?${month}(?: (?:de )?\d{4})?`,
    String.raw`\d{1,2}:\d\d(?::\d\d)? [ap]\.m\.`,
    String.raw`\b[0-9a-f]{12,64}\b|\b[0-9a-f]{4,8}(?: [0-9a-f]{4,8})+\b`,
    String.raw`(?<!\p{L})${unit}(?!\p{L})`,
  ].join('|'),
  'gu',
);

/** Messages stand within messages, and one may be spread over several elements, a line each. */
function outsideMessages(text: string): string[] {
  let depth = 0;
  let left = '';
  for (const letter of text) {
    if (letter === '‹') depth += 1;
    if (depth === 0 || letter === '\n') left += letter;
    if (letter === '›') depth -= 1;
  }
  return left.split('\n').map((line) => line.replace(/\s+/g, ' ').trim());
}

/** Runs in the page: all that stands in it, an element a line, and what its parts are called for those who hear it. */
function textsOf(): { flowing: string; apart: string[] } {
  const lines: string[] = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const { parentElement, textContent } = walker.currentNode;
    if (parentElement && !parentElement.closest('script, style, noscript')) lines.push((textContent ?? '').replace(/\s+/g, ' '));
  }
  const names = ['aria-label', 'title', 'placeholder', 'alt'];
  const named = [...document.querySelectorAll(names.map((name) => `[${name}]`).join())];
  const apart = named.flatMap((element) => names.map((name) => element.getAttribute(name) ?? ''));
  return { flowing: lines.join('\n'), apart: [document.title, ...apart] };
}
