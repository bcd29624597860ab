import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { Speaking, wordsOnce } from './voice';
import { VoidDialog } from './why-dialog';

const shown = async (busy: boolean) => {
  await Promise.all([wordsOnce('recording', 'en'), wordsOnce('shared', 'en')]);
  return renderToStaticMarkup(
    <Speaking voice={{ language: 'en', timeZone: 'America/Chicago', timeStyle: 'US' }}>
      <VoidDialog title="Void" voiding={{ busy, strike: () => Promise.resolve() }} onClose={() => undefined}>
        <p>Why?</p>
      </VoidDialog>
    </Speaking>,
  );
};
const takesNoTap = (html: string) => [...html.matchAll(/<li><button[^>]*aria-disabled="true"/g)].length;

test('while a reason is being saved no other reason takes a tap', async () => {
  expect(takesNoTap(await shown(false))).toBe(0);
  expect(takesNoTap(await shown(true))).toBe(3);
});
