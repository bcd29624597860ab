import { expect, test } from 'vitest';
import { planPaper } from './plan-paper';
import { readBack } from './read-back.test-data';
import { aPlanPaper } from './plan-paper.test-data';
import { at } from './samples.test-data';

const whole = readBack(planPaper(aPlanPaper()));

test('a plan says what is made, how it flows, what may go wrong and how it is kept under control', async () => {
  const { text } = await whole;
  for (const said of [
    'Cured, smoked, cooked sausage',
    'Version 3',
    'In force',
    'Ready to eat',
    'Formula 5 Pork shoulder 70 %',
    '1 Receiving',
    '2 Smoking and cooking',
    'CCP 1',
    'Survival of Salmonella',
    'yes',
    'Smoking kills what the door lets in',
    '≥ 145 °F for 4 min',
    '(Revised Appendix A), December 2021',
    'Any one of: 144 °F for 5 min · 145 °F for 4 min',
    'More than 30 min between two readings leaves it undetermined.',
    'What Core temperature. How Probe.',
    'If it is missed Go on cooking.',
    'Verified Probes checked in ice water.',
  ])
    expect(text).toContain(said);
});

test('a plan names who adopted it, which version it took the place of, and the ledger that holds it', async () => {
  const { text } = await whole;
  expect(text).toContain('Adopted I accept it as the plan of this establishment. Signed Nora Vale');
  expect(text).toContain('Supersedes Version 2, adopted by Nora Vale, Sep 1, 2025, 9:00 am CDT');
  expect(text).toContain('9f3c 2a71 b004 e1d2 7c55 aa90 d1f0 e38b 6142 cc77 30ab 95e2 f84d 016b 3c9a e57d');
  expect(text).toContain('A set of limits is a reference, not a proof.');
});

test('a plan that nobody signed says so, and what keeps it from being signed', async () => {
  const draft = aPlanPaper({ adopted: undefined, supersedes: undefined, cautions: ['A step has no hazard.'] });
  const { text } = await readBack(planPaper(draft));
  expect(text).toContain('Not adopted. This version is signed by nobody');
  expect(text).toContain('A step has no hazard.');
  expect(text).not.toContain('Signed');
});

test('how often at least something is read stands with how it is monitored', async () => {
  expect((await whole).text).toContain('How often Every cook. Fewest readings At least every 30 min. By whom Operator.');
});

test('what a limit asks for besides its figure stands under it', async () => {
  const [cooking] = aPlanPaper().controlPoints;
  const limits = (cooking?.limits ?? []).map((limit) => ({ ...limit, conditions: ['Only with at least 100 ppm.'] }));
  const { text } = await readBack(planPaper(aPlanPaper({ controlPoints: cooking ? [{ ...cooking, limits }] : [] })));
  expect(text).toContain('≥ 145 °F for 4 min Only with at least 100 ppm.');
});

test('a figure that nobody confirmed says so', async () => {
  const [cooking] = aPlanPaper().controlPoints;
  const limits = (cooking?.limits ?? []).map((limit) => ({ ...limit, source: { ...limit.source, confirmed: false } }));
  const { text } = await readBack(planPaper(aPlanPaper({ controlPoints: cooking ? [{ ...cooking, limits }] : [] })));
  expect(text).toContain('This figure has not been confirmed against its source.');
});

test('every box of the flow diagram stands on its sheet, in the order of the steps', async () => {
  const steps = Array.from({ length: 60 }, (_each, index) => ({
    name: `Stage number ${index + 1} of a process with a long name`,
    points: [],
    hazards: [],
  }));
  const { pages, text } = await readBack(planPaper(aPlanPaper({ steps })));
  const found = [...text.matchAll(/Stage number (\d+)/g)].map(([, number]) => Number(number));
  const inOrder = steps.map((_step, index) => index + 1);
  expect([...new Set(found)]).toEqual(inOrder);
  for (const { items, height } of pages) for (const { y } of items) expect(y > 0 && y < height).toBe(true);
});

test('its outline leads to every section', async () => {
  const { outline } = await whole;
  expect(outline).toEqual(['Flow diagram', 'Hazard analysis', 'CCP 1 Cooking', 'Notes', 'Adoption']);
});

test('the same plan printed twice is the same file', async () => {
  const again = await readBack(planPaper(aPlanPaper({ written: { by: 'Nora Vale', at: at(1, 8) } })));
  expect(again.bytes.equals((await whole).bytes)).toBe(true);
});
