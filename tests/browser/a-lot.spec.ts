import type { Language } from '@larderbook/messages';
import { expect, test } from '../support/in-a-browser';
import { doNext } from './steps/do-next';
import { finish } from './steps/finish';
import { keyIn, tapIn } from './steps/key-in';
import { nameWhatComesIn } from './steps/name-what-comes-in';
import { choose } from './steps/choose';
import { readPaper } from './steps/read-paper';
import { readProbes } from './steps/read-probes';
import { tapOnTo } from './steps/tap-on-to';
import { around, locales, speaking } from './steps/words';

test.use({ viewport: { width: 768, height: 1024 }, hasTouch: true });

/** The first formula, the first plan, the first line. */
const first = '1';
const anHour = 60 * 60_000;
/** The day of the story began ten hours ago; the tablet's clock goes through it. */
const dayBegan = Date.now() - 10 * anHour;
const salt = 'Curing salt 6.25 %, fine';
/** What the people of each shop call their goods, suppliers and customers. */
const named = {
  en: { product: 'Ring sausage', code: 'RING', meat: 'Pork leg', supplier: 'Hollow Holt Meats', customer: 'Fenwick Deli' },
  es: { product: 'Salchicha en aro', code: 'ARO', meat: 'Pierna de cerdo', supplier: 'Carnes Vallehondo', customer: 'Fonda Tejocote' },
};

for (const language of Object.keys(locales) as Language[]) {
  test.describe(`on a tablet held upright, set to ${language}`, () => {
    test.use({ locale: locales[language] });
    const speaks = speaking(language);
    const supplierLot = `HH-2291-${language}`;
    const { product, meat, supplier, customer } = named[language];
    const [save, next, done] = [speaks('shared')('save'), speaks('shared')('next'), speaks('shared')('done')];
    /** What the plan to start from calls its control points, in the language of whoever began it. */
    const sayStarter = speaks('starter-plans');
    const [cook, chill] = [sayStarter('smoking-and-cooking'), sayStarter('chilling')];

    test('one lot, from the door to the customer, and on paper', async ({ page, shop, signedIn }) => {
      const tap = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' }).click();
      const at = (hours: number) => page.clock.setSystemTime(dayBegan + hours * anHour);
      const saved = speaks('shared')('saved');
      let lot = { url: '', code: '' };

      await test.step('the owner names what comes in and who brings it', async () => {
        await signedIn(shop.owner);
        await nameWhatComesIn(page, { supplier, meat, salt }, speaks);
      });

      await test.step('a product gets its formula, and the ppm of its curing salt stands beside the percentage', async () => {
        const [say, sayFormula] = [speaks('products'), speaks('formulas')];
        await page.goto('/products');
        await page
          .getByRole('button', { name: say('add') })
          .first()
          .click();
        await page.getByLabel(say('name'), { exact: true }).fill(product);
        await page.getByLabel(say('code'), { exact: true }).fill(named[language].code);
        await page.getByRole('radio', { name: say('process-cured-smoked-cooked') }).check();
        await page.getByLabel(say('of-species'), { exact: true }).selectOption('pork');
        await page.getByLabel(say('use-by')).fill('21');
        await page.getByLabel(say('storage')).fill('Keep refrigerated at or below 40 °F.');
        await tap(save);
        await expect(page.getByRole('heading', { name: product, level: 1 })).toBeVisible();

        await page.getByRole('link', { name: sayFormula('write') }).click();
        await choose(page, sayFormula('numbered-meat', { number: first }), meat);
        const percent = page.getByLabel(sayFormula('of-the-meat-block'));
        await percent.first().fill('100');
        await tap(sayFormula('add-ingredient'));
        await choose(page, sayFormula('numbered-ingredient', { number: first }), salt);
        await percent.nth(1).fill('0.25');
        await expect(page.getByText('156.25 ppm')).toBeVisible();
        await page.getByLabel(sayFormula('expected-yield')).fill('90');
        await tap(sayFormula('save-as', { version: first }));
        // the draft bears the same heading until it is saved
        await expect(page.getByRole('button', { name: sayFormula('save-as', { version: first }) })).toBeHidden();
        await expect(page.getByRole('heading', { name: sayFormula('numbered', { version: first }) })).toBeVisible();
      });

      await test.step('its plan is started from published figures, saved, and signed', async () => {
        const [say, sayDraft, sayPoint] = [speaks('plans'), speaks('plan-drafts'), speaks('plan-points')];
        await page.goto('/products');
        await page.getByRole('link', { name: product }).click();
        await page.getByRole('link', { name: speaks('products')('start-a-plan') }).click();
        await page.getByRole('button', { name: sayStarter('cured-smoked-and-cooked-sausage') }).click();
        await page.getByRole('link', { name: sayStarter('cure-accelerator-erythorbate') }).click();
        await tap(sayPoint('remove'));
        const unsaid = page.getByText(sayDraft('support-unsaid'));
        await expect(unsaid).toBeVisible();
        await page.locator('[data-kind="critical"]').getByRole('link', { name: chill }).click();
        await page.getByLabel(speaks('limit-forms')('own-support')).fill('Letter of our process authority, folder 3');
        await tap(sayDraft('back-to-plan'));
        await expect(unsaid).toBeHidden();
        await tap(sayDraft('save-as', { version: first }));
        await tap(say('adopt-this'));
        await expect(page.getByRole('listitem').filter({ hasText: new RegExp(`^${chill}: .*folder 3`) })).toBeVisible();
        await tap(say('sign-and-adopt'));
        await expect(page.getByText(say('holds-until').split('.')[0] ?? '')).toBeVisible();
      });

      await test.step('the meat is judged at the door', async () => {
        const say = speaks('receiving');
        await signedIn(shop.operator);
        await at(0);
        await page.goto('/receiving/new');
        await page.getByRole('button', { name: meat }).click();
        await page.getByRole('button', { name: supplier }).click();
        await page.getByLabel(say('supplier-lot')).fill(supplierLot);
        await tap(next);
        await keyIn(page, say('weight'), '60', next);
        await keyIn(page, meat, '37.5', next);
        await expect(page.getByText(speaks('shared')('met'), { exact: true })).toBeVisible();
        await tap(say('accept-delivery'));
        await expect(page.getByText(say('write-number'))).toBeVisible();
      });

      const [say, sayForm] = [speaks('lots'), speaks('lot-forms')];
      await test.step('the lot is started and its meat goes in, as taken and as trimmed', async () => {
        await at(0.1);
        await page.goto('/lots/new');
        await page.getByRole('button', { name: product }).click();
        await tap(say('start-the-lot'));
        await doNext(page, say('put-in-item', { item: meat }), say('put-in-meat'));
        lot = { url: page.url(), code: (await page.getByRole('heading', { level: 1 }).innerText()).split(' ')[0] ?? '' };

        await page.getByRole('button', { name: sayForm('item-left', { item: meat, weight: '60 lb' }) }).click();
        await keyIn(page, sayForm('weight-taken'), '52', sayForm('next-trimming'));
        await keyIn(page, sayForm('trimmed-meat'), '50', save);
        await expect(page.getByText(sayForm('meat-block-now', { weight: '50 lb' }))).toBeVisible();
        await tap(done);
      });

      await test.step('the curing salt is judged on the meat as trimmed, while it is still on the scale', async () => {
        await at(0.2);
        await page.goto(lot.url);
        await doNext(page, say('weigh-item', { item: salt }), say('weigh'));
        await tapIn(page, sayForm('weight-target', { weight: '56.6 g' }), '56.69', speaks);
        const dialog = page.getByRole('dialog');
        await expect(dialog.getByText(saved)).toBeVisible();
        await expect(dialog.getByText(speaks('shared')('met'), { exact: true })).toBeVisible();
        await tap(sayForm('why-by-which'));
        await expect(dialog.getByText(/156\.\d* ppm/).first()).toBeVisible();
      });

      await test.step('it is smoked and cooked until a row of the table is met', async () => {
        await at(0.5);
        await page.goto(lot.url);
        await doNext(page, cook, say('record'));
        const rounds = [
          { after: 30, degrees: ['45', '46'] },
          { after: 120, degrees: ['128', '129'] },
          { after: 130, degrees: ['134', '135'] },
          { after: 150, degrees: ['160', '161.5'] },
        ];
        await readProbes(page, dayBegan, rounds, speaks);
        await finish(page, cook, speaks);
      });

      await test.step('it is chilled in its two stages, and told when it will be there', async () => {
        await at(2.6);
        await page.goto(lot.url);
        await doNext(page, chill, say('record'));
        const begin = [
          { after: 160, degrees: ['150', '151.5'] },
          { after: 175, degrees: ['130.2', '131.8'] },
          { after: 190, degrees: ['113.7', '115.1'] },
          { after: 205, degrees: ['100.1', '101.2'] },
        ];
        await readProbes(page, dayBegan, begin, speaks);
        const chilling = new RegExp(`^${chill}`);
        await doNext(page, chilling, say('next-reading'));
        await page.getByRole('radio', { name: sayStarter('air-of-the-chiller') }).check();
        await keyIn(page, sayForm('measured-temperature'), '35.5', save);
        const dialog = page.getByRole('dialog');
        await expect(dialog.getByText(`${sayStarter('air-of-the-chiller')} 35.5 °F`, { exact: true })).toBeVisible();
        const forecast = dialog.getByRole('group', { name: speaks('explaining')('forecast') });
        await expect(forecast).toContainText(speaks('explaining')('on-course'));
        await expect(forecast).toContainText('35.5 °F');
        await tap(done);
        await expect(page.getByText(speaks('day-sheet')('judged-by-none'))).toBeVisible();

        await doNext(page, chilling, say('next-reading'));
        const end = [
          { after: 230, degrees: ['78', '79.5'] },
          { after: 400, degrees: ['38', '39'] },
        ];
        await readProbes(page, dayBegan, end, speaks);
        await finish(page, chill, speaks);
      });

      await test.step('its label is compared, its storage measured, and it is packed', async () => {
        await at(7);
        await page.goto(lot.url);
        await doNext(page, sayStarter('label-and-allergens'), say('answer'));
        await tap(sayForm('yes'));
        await page.getByLabel(sayForm('what-seen')).fill('Label 12 on the roll, read against the formula.');
        await tap(save);
        await tap(done);

        await doNext(page, sayStarter('cold-storage'), say('record'));
        await keyIn(page, sayForm('measured-temperature'), '37', save);
        await tap(done);

        await doNext(page, say('pack-the-lot'), say('pack'));
        await keyIn(page, sayForm('how-many'), '40', sayForm('next-net-weight'));
        await keyIn(page, sayForm('net-weight'), '1', sayForm('next-use-by'));
        await tap(save);
        await expect(page.getByRole('dialog', { name: sayForm('packed') })).toBeVisible();
        await tap(done);
        await expect(page.getByRole('region', { name: say('review-first') })).toBeVisible();
      });

      await test.step('who made its records may not review it; somebody else signs', async () => {
        const sayReview = speaks('reviews');
        await page.clock.setSystemTime(Date.now());
        await page.goto(`${lot.url}/review`);
        await expect(page.getByText(sayReview('waiting'))).toBeVisible();
        await expect(page.getByText(sayReview('records-by', { names: [shop.operator.name] }))).toBeVisible();
        await expect(page.getByRole('button', { name: sayReview('sign') })).toBeHidden();

        await signedIn(shop.reviewer);
        await page.goto('/reviews');
        await page.getByRole('link', { name: lot.code }).click();
        await tap(sayReview('sign'));
        await expect(page.getByText(sayReview('signed-by', { who: shop.reviewer.name }))).toBeVisible();
      });

      await test.step('its packages leave for a customer', async () => {
        const sayShipping = speaks('shipping');
        await signedIn(shop.operator);
        await page.clock.setSystemTime(Date.now()); // not before the review, by the book's own clock
        await page.goto('/shipping/new');
        const name = page.getByLabel(speaks('items')('name'), { exact: true });
        await tapOnTo(name, page.getByRole('button', { name: sayShipping('new-customer') }));
        await name.fill(customer);
        await page.getByLabel(speaks('items')('address')).fill('2 Tanner Street, Fenwick');
        await page.getByLabel(speaks('items')('contact')).fill('The counter, extension 2');
        await tap(save);
        await page.getByRole('button', { name: product }).click();
        await keyIn(page, sayShipping('how-many'), '25', sayShipping('put-on'));
        await tap(sayShipping('that-is-all'));
        await page.getByLabel(sayShipping('document')).fill('DN-71');
        await tap(sayShipping('ship-now'));
        await expect(
          page.getByRole('heading', { name: around(sayShipping('is-recorded', { number: '…', name: customer })) }),
        ).toBeVisible();
      });

      await test.step('from the supplier’s lot every package is found, all of the weight, and the way back', async () => {
        const sayTrace = speaks('trace');
        await signedIn(shop.owner);
        await page.goto('/trace');
        await page.getByLabel(sayTrace('find')).fill(supplierLot);
        await page.getByRole('link', { name: new RegExp(meat) }).click();
        await expect(page.getByText(sayTrace('shipped-to', { packages: 25, customers: 1 }))).toBeVisible();
        await expect(page.getByRole('region', { name: sayTrace('customers-to-call') }).getByText(customer)).toBeVisible();
        await expect(
          page
            .getByRole('region', { name: sayTrace('mass-balance') })
            .getByText(/^100\s%$/)
            .first(),
        ).toBeVisible();

        await page.goto('/trace');
        await page.getByLabel(sayTrace('find')).fill(lot.code);
        await page.getByRole('link', { name: lot.code }).last().click();
        await expect(page.getByText(sayTrace('of-packing'))).toBeVisible();
        const behind = page.getByRole('region', { name: sayTrace('suppliers-behind') });
        await expect(behind.getByText(supplier)).toBeVisible();
        await expect(behind.getByText(sayTrace('item-lot', { item: meat, lot: supplierLot }))).toBeVisible();
      });

      await test.step('its record and the log of its chill open on paper and read as they were recorded', async () => {
        await page.goto(lot.url);
        const record = await readPaper(page, page.getByRole('link', { name: say('on-paper'), exact: true }));
        const said = [lot.code, supplierLot, '161.5 °F', '56.69 g', customer, shop.operator.name, shop.reviewer.name];
        for (const words of said) expect(record).toContain(words);
        expect(record).toMatch(/156\.\d* ppm/);
        expect(record).toMatch(/[≤≥]/);
        const sayPaper = speaks('paper-sheet');
        expect(record).toMatch(around(sayPaper('page-of', { page: '1', pages: '…' })));
        expect(record).toContain(speaks('paper-lot')('mass-balance'));

        await page.goto('/papers');
        await choose(page, speaks('papers')('control-point'), `${product}: ${chill}`);
        const log = await readPaper(page, page.getByRole('link', { name: speaks('papers')('open-log'), exact: true }));
        for (const words of [chill, lot.code, '79.5 °F', '39 °F', shop.operator.name]) expect(log).toContain(words);
      });
    });
  });
}
