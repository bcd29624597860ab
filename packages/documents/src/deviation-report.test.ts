import { expect, test } from 'vitest';
import { deviationReport } from './deviation-report';
import { tellingOf } from './page/telling';
import { readBack } from './read-back.test-data';
import { aDeviationReport } from './deviation-report.test-data';
import { aDeviation } from './samples.test-data';

test('a deviation is reported in the four parts of 9 CFR 417.3(a), each signed with its time', async () => {
  const { text, pages } = await readBack(deviationReport(aDeviationReport()));
  for (const said of [
    '2025-014',
    'Lot RS-250904-1',
    '2 h 15 min from 130 to 80 °F against 130 → 80 °F within 1.5 h: 45 min too long.',
    '417.3(a)(1) Cause identified and eliminated',
    'a hook stood in the seal',
    'Nora Vale, Sep 4, 2025, 2:40 pm CDT',
    '417.3(a)(2) Control point under control again',
    '417.3(a)(3) Measures to prevent recurrence',
    '417.3(a)(4) No injurious or adulterated product enters commerce',
    'release: 43.10 kg',
    'Closed',
  ])
    expect(text).toContain(said);
  expect(pages[0]?.text).toContain(`Page 1 of ${pages.length}`);
});

test('an open deviation says what is missing and that the lot is on hold', async () => {
  const parts = aDeviation().parts.map((part, i) => (i === 0 ? { ...part, said: [] } : part));
  const deviation = aDeviation({ parts, dispositions: [], undecided: '43.10 kg of 43.10 kg', closed: undefined });
  const { text } = await readBack(deviationReport(aDeviationReport({ deviation })));
  expect(text).toContain('Cause identified and eliminated Not recorded.');
  expect(text).toContain('Not decided: 43.10 kg of 43.10 kg.');
  expect(text).toContain('The lot is on hold.');
  expect(text).not.toContain('Closed Nora');
});

test('says when the plan prepared no action for the case', async () => {
  const { text } = await readBack(deviationReport(aDeviationReport({ preparedAction: undefined })));
  expect(text).toContain('The plan has no prepared action for this case.');
});

test('prints every decision with its quantity, and how what was condemned was destroyed', async () => {
  const by = { by: 'Nora Vale', at: Date.UTC(2025, 8, 5, 16) };
  const deviation = aDeviation({
    recurrence: ['No. 2, Aug 12, 2025, lot RS-250812-1: Chilling: 20 min too long.'],
    dispositions: [
      {
        ...by,
        decision: 'condemn',
        quantity: '2.8 lb of RS-250904-1',
        why: 'Seals leak.',
        destroyed: { ...by, text: 'Denatured with dye, collected by the renderer.' },
      },
      { ...by, decision: 'rework', quantity: '5 lb of RS-250904-1', alsoFor: 'No. 3' },
      { ...by, decision: 'condemn', quantity: '1 lb of RS-250904-1', toDestroy: true },
    ],
    undecided: '19.9 lb of 28.7 lb',
    closed: undefined,
  });
  const { text } = await readBack(deviationReport(aDeviationReport({ deviation })));
  for (const said of [
    'No. 2, Aug 12, 2025, lot RS-250812-1',
    'condemn: 2.8 lb of RS-250904-1. Seals leak.',
    'Destroyed: Denatured with dye, collected by the renderer.',
    'rework: 5 lb',
    'The same decision speaks for No. 3.',
    'Not yet destroyed: held apart.',
    'Not decided: 19.9 lb of 28.7 lb.',
  ])
    expect(text).toContain(said);
});

test('prints a decision and a destruction that were voided struck through, with why and by whom', async () => {
  const by = { by: 'Nora Vale', at: Date.UTC(2025, 8, 5, 16) };
  const voided = { ...by, by: 'Ines Hollis', text: 'The result was of another lot.', how: 'voided' as const };
  const condemned = { ...by, decision: 'condemn', quantity: '1 lb of RS-250904-1', toDestroy: true };
  const deviation = aDeviation({
    dispositions: [
      { ...by, decision: 'release', quantity: '2.8 lb of RS-250904-1', voided },
      { ...condemned, notDestroyed: [{ destroyed: { ...by, text: 'Buried.', enteredAt: Date.UTC(2025, 8, 5, 18) }, voided }] },
    ],
  });
  const { text } = await readBack(deviationReport(aDeviationReport({ deviation })));
  for (const said of ['release: 2.8 lb', 'Voided: The result was of another lot. Ines Hollis, Sep 5, 2025', 'Destroyed: Buried.'])
    expect(text).toContain(said);
});

test('prints what was corrected of its action, and a closing that was taken back, struck through with why', async () => {
  const by = { by: 'Nora Vale', at: Date.UTC(2025, 8, 5, 16) };
  const struck = { ...by, by: 'Ines Hollis', text: 'It was the freezer.', how: 'corrected' as const };
  const said = [
    { ...by, text: 'Set apart in the walk-in.', struck },
    { ...by, text: 'Set apart in the freezer.' },
  ];
  const takenBack = { ...by, by: 'Ines Hollis', text: 'The result was not in yet.', how: 'taken back' as const };
  const deviation = aDeviation({
    parts: [
      { asks: 'Segregated and held', said },
      { asks: 'Reassessed', said: [{ ...by, text: 'No.', struck }] },
    ],
    closed: undefined,
    notClosed: [{ ...by, statement: 'Done.', struck: takenBack }],
  });
  const { text } = await readBack(deviationReport(aDeviationReport({ deviation })));
  for (const words of [
    'Set apart in the walk-in.',
    'Corrected: It was the freezer. Ines Hollis, Sep 5, 2025',
    'Set apart in the freezer.',
    'Not recorded.',
    'Done.',
    'Taken back: The result was not in yet. Ines Hollis',
    'Open. The lot is on hold.',
  ])
    expect(text).toContain(words);
});

test('a prerequisite missed a limit, and its corrective action names no paragraph', async () => {
  const deviation = aDeviation({
    kind: 'Limit missed',
    answeredUnder: undefined,
    parts: [{ asks: 'What was done', said: [{ text: 'The door was shut.', by: 'Nora Vale', at: 0 }] }],
  });
  const { text } = await readBack(deviationReport(aDeviationReport({ deviation })));
  expect(text).toContain('Limit missed');
  expect(text).not.toMatch(/ritical limit|417\.3/);
});

test('whoever keeps it can read its marks, and prove by the ledger that nothing before it changed', async () => {
  const { text } = await readBack(deviationReport(aDeviationReport()));
  expect(text).toContain('9f3c 2a71 b004 e1d2 7c55 aa90 d1f0 e38b 6142 cc77 30ab 95e2 f84d 016b 3c9a e57d');
  const { say } = tellingOf(aDeviationReport().sheet);
  expect(text).toContain(say('means-undetermined'));
});
