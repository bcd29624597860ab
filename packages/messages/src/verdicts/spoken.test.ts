import type { Figures } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { allWords } from '../all';
import type { Language } from '../languages';
import { SAMPLE } from './sample-figures.test-data';
import { spoken } from './spoken';

const keys = Object.keys(allWords.verdicts.en);
const asksOf = (key: string) => key.split('+').slice(1);

/** One text, told with every figure but those for which another text of its code would be said. */
function toldBy(language: Language, key: string): string | undefined {
  const [code = ''] = key.split('+');
  const asks = asksOf(key);
  const others = keys.filter((other) => other.split('+')[0] === code).flatMap(asksOf);
  const figures: Figures = Object.fromEntries(Object.entries(SAMPLE).filter(([name]) => asks.includes(name) || !others.includes(name)));
  return spoken(allWords.verdicts[language], { language, timeZone: 'UTC', timeStyle: 'US' })(code, figures);
}

test.each([
  ['no-usable-reading.measured', 'nothing usable'],
  ['no-usable-reading.because', 'There is no usable reading.'],
  ['no-usable-reading.next', 'Check the probe and read the core temperature.'],
  ['limit-unusable.measured', 'not judged'],
  ['limit-unusable.because', 'The rows contradict each other.'],
  ['limit-unusable.next', 'Correct the limit in the plan.'],
  ['error-unusable.measured', 'not judged'],
  ['error-unusable.because', 'The error of the thermometer is not a usable figure.'],
  ['error-unusable.next', 'Enter what the thermometer may be wrong by, from its last check.'],
  ['piece-unusable.measured', 'not judged'],
  ['piece-unusable.because', 'The smallest dimension of the piece is not a usable figure.'],
  ['piece-unusable.next', 'Correct the piece in the plan.'],
  ['too-many-readings.measured', 'not judged'],
  ['too-many-readings.because', 'There are 1,000,001 readings; at most 1,000,000 are judged at once.'],
  ['too-many-readings.next', 'Cut the series to the lot, or read the logger at longer steps.'],
  ['out-of-order.measured', 'not judged'],
  ['out-of-order.because', 'A reading is earlier than one before it.'],
  ['out-of-order.next', 'Judge the whole series again.'],
  ['clock-in-doubt.because', 'The clock of the readings jumps by exactly an hour.'],
  ['clock-in-doubt.next', 'Correct the reading, or say that its time is right, and why.'],
  ['time-to-come.because', 'A reading is dated later than it was kept: it cannot have been read yet.'],
  ['time-to-come.next', 'Correct its time, or void it and read again.'],
  ['put-in-later.because', 'What was read is within the limit; meat went in after the last reading, and nothing was read of that.'],
  ['put-in-later.next', 'Read it again with all of the meat in. Correct the time it went in if that is wrong, or open a deviation.'],
  ['probes-silent.because', 'What was read is within the limit; of right, left nothing was read, and the plan asks for it.'],
  ['probes-silent.next', 'Read right, left, or hold the lot. A plan that follows fewer names fewer.'],
  ['only-with-doubted.because', 'The limit is met only with readings that can hardly be the core’s.'],
  ['only-with-doubted.next', 'Check where the probe sits and in which unit it reads, then read the core again.'],
  ['only-with-colder.because', 'The limit is met only with readings colder than what the core lies in.'],
  ['only-with-colder.next', 'Check the unit and where the probe sits, then read the core and what it lies in again.'],
  ['read-core-and-around', 'Check the unit and where the probe sits, then read the core and what it lies in again.'],
  ['faster-than-a-core.because', 'A reading rises or falls faster than the core of the piece can.'],
  ['faster-than-a-core.next', 'Say which readings were not of the core, and why: it is then judged without them.'],
  ['formula-not-allowed.measured', '98 ppm for at least 100 ppm'],
  ['formula-not-allowed.margin+margin', '2 ppm short'],
  ['formula-not-allowed.because', 'This option may not be used: it asks for at least 100 ppm, and there is 98 ppm.'],
  ['formula-not-allowed.next', 'Hold the lot and follow the corrective action of the plan; judge it by an option for any product.'],
  ['judge-by-another-option', 'Hold the lot and follow the corrective action of the plan; judge it by an option for any product.'],
  ['formula-not-known.because', 'Whether this option may be used is not known: it asks for at least 100 ppm. Nothing was weighed.'],
  ['formula-not-known.next+next', 'Weigh it.'],
  ['once-sent.because', 'The readings are within the limit. Whether this option may be used is judged from what went in, once it is sent.'],
  ['probe-silent', 'No reading of C.'],
  ['probe-governs', 'Probe C governs: the worst of 2 probes.'],
  ['unnamed-governs', 'The probe without a name governs: the worst of 2 probes.'],
  ['set-aside', '2 readings left out: a person said that they were not of the core.'],
  ['cannot-be', '2 readings left out: the value or its time cannot be true.'],
  ['disagreeing', '2 readings of the same instant as another but with another value; the worse was used.'],
  ['sorted', 'The readings were not in order of time; they were sorted.'],
  ['taken-as-the-worse', 'Every reading was taken as the worse within 0.6 °F.'],
  ['clock-in-the-future', 'A reading is dated later than it was kept: it cannot have been read yet.'],
  ['clock-clock-reset', 'The clock of the readings jumps by days: it was lost or set anew.'],
  ['clock-an-hour-off', 'The clock of the readings jumps by exactly an hour.'],
  ['clock-out-of-order', 'A reading came after a later one: one of their times may be wrong.'],
  ['doubt-rises-faster-than-the-piece-can', '2 readings in doubt: risen faster than the core of the piece can.'],
  [
    'doubt-falls-faster-than-the-piece-can',
    '2 readings in doubt: fallen faster than the core of the piece can: the probe may be out of the product.',
  ],
  ['doubt-goes-on-from-what-was-not-of-the-core', '2 readings in doubt: like the one before, which was not of the core.'],
  ['doubt-spike', '2 readings in doubt: far from both neighbours, which agree.'],
  ['doubt-power-up', '2 readings in doubt: what a probe shows before it has measured.'],
  ['doubt-hotter-than-a-core', '2 readings in doubt: hotter than a moist core gets: is it °F?'],
  ['doubt-colder-than-around', '2 readings in doubt: colder than what the core lies in.'],
  ['dwell-at-once.measured', '151.5 °F'],
  ['dwell-at-once.because', 'The core reached 145 °F, where no holding time is needed.'],
  ['dwell-held.measured', '3 min at or above 145 °F'],
  ['dwell-held.margin', '2 min to spare'],
  ['dwell-held.because', 'The core stayed at or above 145 °F for 3 min; 4 min are needed.'],
  ['dwell-gap.measured', '3 min at or above 145 °F'],
  ['dwell-gap.because', 'There is no reading for 20 min; at most 15 min may lie between two readings.'],
  ['dwell-gap.next', 'Add the readings in between from the logger, or hold again: 145 °F for 4 min.'],
  ['dwell-holding.measured', '3 min at or above 145 °F'],
  ['dwell-holding.margin', '25 min to go'],
  ['dwell-holding.because', '4 min at or above 145 °F are needed.'],
  ['dwell-holding.next', 'Keep heating: 25 min more at or above 145 °F.'],
  ['dwell-holding.next+instant', 'Keep heating: 25 min more at or above 145 °F, or reach 158 °F.'],
  ['dwell-holding.next+age', 'Read the core now: the last reading is 16 min old.'],
  ['dwell-coming-up.measured', '151.5 °F'],
  ['dwell-coming-up.because', 'The core is not at 145 °F, the lowest temperature of the table.'],
  ['dwell-coming-up.next', 'Keep heating: reach at least 145 °F.'],
  ['dwell-too-short.measured', '3 min at or above 145 °F, 151.5 °F at most'],
  ['dwell-too-short.margin', '1 min short'],
  ['dwell-too-short.because', 'The longest stretch at or above 145 °F is 1 min short of 4 min.'],
  ['dwell-too-short.next', 'Keep heating: 4 min without a break at or above 145 °F. Hold the lot until then.'],
  ['dwell-too-short.next+instant', 'Keep heating: 4 min without a break at or above 145 °F, or reach 158 °F. Hold the lot until then.'],
  ['dwell-too-cold.measured', '151.5 °F'],
  ['dwell-too-cold.margin', '1 min short'],
  ['dwell-too-cold.because', 'The core never reached 145 °F, the lowest temperature of the table.'],
  ['dwell-too-cold.next', 'Keep heating: reach 145 °F. Hold the lot until then.'],
  ['dwell-too-cold.next+needed', 'Keep heating: 145 °F for 4 min. Hold the lot until then.'],
  ['dwell-too-cold.next+needed+instant', 'Keep heating: 145 °F for 4 min, or reach 158 °F. Hold the lot until then.'],
  ['dwell-across-gap', 'Across the gap it would be long enough, but nobody knows that it stayed at 145 °F.'],
  ['dwell-straight', 'By straight lines between the readings: about 7 min at or above 145 °F in all. For information only.'],
  ['dwell-straight-briefly', 'By straight lines between the readings: less than 1 min at or above 145 °F in all. For information only.'],
  ['dwell-hold.stage', 'hold'],
  ['dwell-hold.bound', '145 °F for 4 min'],
  ['dwell-come-up.stage', 'come-up'],
  ['dwell-come-up.bound', '145 °F'],
  ['stage-took.measured', '130 → 80 °F in 1 h 45 min'],
  ['stage-took-in-all.measured', '130 → 80 °F in 1 h 45 min in all'],
  ['stage-so-far.measured', '130 → 80 °F: 84 °F after 1 h 45 min'],
  ['stage-not-read.measured', '130 → 80 °F: nothing read'],
  ['stage-not-begun.measured', '130 → 80 °F not begun'],
  ['stage-not-timed.measured', '130 → 80 °F not timed'],
  ['from-cooking', 'end of cooking → 80 °F'],
  ['no-stages.because', 'The limit has no stages.'],
  ['cooling-in-time.margin+spare', '2 min to spare'],
  ['cooling-in-time.because', '130 → 80 °F took at most 1 h 45 min; 1 h 30 min are allowed.'],
  ['cooling-too-late.margin+over', '15 min too long'],
  ['cooling-too-late.because', '130 → 80 °F took 1 h 45 min; 1 h 30 min are allowed.'],
  ['cooling-too-late.next', 'Hold the lot and follow the corrective action of the plan.'],
  ['cooling-still-above.margin+over', '15 min too long'],
  ['cooling-still-above.because', '130 → 80 °F is not done: 84 °F after 1 h 45 min; 1 h 30 min are allowed.'],
  ['cooling-still-above.next', 'Chill on without a break. Hold the lot and follow the corrective action of the plan.'],
  ['cooling-ended-above.margin+over', '15 min too long'],
  ['cooling-ended-above.because', 'Chilling was ended before 80 °F was reached: the last reading is 84 °F.'],
  ['cooling-ended-above.next', 'Chill on to 80 °F and read again. Hold the lot and follow the corrective action of the plan.'],
  ['cooling-not-shown.because', 'The readings do not show that 130 → 80 °F took no longer than 1 h 30 min.'],
  ['cooling-not-shown.next', 'Add the readings in between from the logger, or hold the lot.'],
  ['cooling-gap.because+gap', 'There is no reading for 20 min; at most 15 min may lie between two readings.'],
  ['cooling-gap.next', 'Add the readings in between from the logger, or hold the lot.'],
  ['cooling-start-unknown.margin+toGo', '40 min left at the last reading'],
  ['cooling-start-unknown.because', 'The first reading is already below 130 °F, so the start of 130 → 80 °F is not known.'],
  ['cooling-start-unknown.next', 'Add an earlier reading, or the time cooking ended.'],
  ['cooling-end-of-cooking-late.margin+toGo', '40 min left at the last reading'],
  [
    'cooling-end-of-cooking-late.because',
    'The core was as hot before the recorded end of cooking as after it: 130 → 80 °F may have begun earlier.',
  ],
  ['cooling-end-of-cooking-late.next', 'Correct the time cooking ended, to when the core was hottest or before.'],
  ['cooling-end-of-cooking-unknown.because', 'The time cooking ended is not recorded, so 130 → 80 °F cannot be timed.'],
  ['cooling-end-of-cooking-unknown.next', 'Record the end of cooking.'],
  ['cooling-nothing-since-cooking.margin+toGo', '40 min left at the last reading'],
  ['cooling-nothing-since-cooking.because', 'There is no reading since cooking ended.'],
  ['cooling-nothing-since-cooking.next+left', 'Chill and read the core: 80 °F within the next 25 min.'],
  ['cooling-nothing-since-cooking.next+leftThen', 'Chill and read the core: 80 °F within 50 min of the last reading.'],
  ['cooling-running.margin+toGo', '40 min left at the last reading'],
  ['cooling-running.because', '80 °F has not been reached yet.'],
  ['cooling-running.next+left', 'Chill on: reach 80 °F within the next 25 min.'],
  ['cooling-running.next+leftThen', 'Chill on: reach 80 °F within 50 min of the last reading.'],
  ['cooling-overdue.margin+toGo', '40 min left at the last reading'],
  ['cooling-overdue.because', '1 h 30 min are over and no reading shows 80 °F.'],
  ['cooling-overdue.next', 'Read the core temperature now.'],
  ['cooling-not-begun.because', '130 → 80 °F has not begun: no reading below 130 °F yet.'],
  ['cooling-not-begun.next', 'Chill without a break and read the core often.'],
  ['cooling-straight', 'By straight lines between the readings: 130 → 80 °F in about 7 min.'],
  ['cooling-straight-briefly', 'By straight lines between the readings: 130 → 80 °F in less than 1 min.'],
  ['cooling.stage', '130 → 80 °F'],
  ['cooling.bound', '80 °F'],
  ['chill-start-end-unknown.because', 'The time cooking ended is not recorded, so the start of chilling cannot be judged.'],
  ['chill-start-end-unknown.next', 'Enter the time cooking ended.'],
  [
    'chill-start-end-late.because',
    'The core was as hot before the recorded end of cooking as after it: the start of chilling cannot be timed.',
  ],
  ['chill-start-end-late.next', 'Correct the time cooking ended, to when the core was hottest or before.'],
  ['chill-start-by-core.margin', '2 min to spare'],
  ['chill-start-by-core.because', 'The core was below 130 °F within 1 h 30 min of cooking.'],
  ['chill-start-not-shown.because', 'Nothing shows that chilling began within 1 h 30 min of the end of cooking.'],
  ['chill-start-not-shown.next', 'The plan does not ask when chilling began: hold the lot.'],
  [
    'chill-start-not-shown.next+from',
    'The plan does not ask when chilling began. Add a core read below 130 °F in that time, or hold the lot.',
  ],
  ['chill-start-not-shown.next+askedAt', 'Answer “Into the chiller” with its time, or hold the lot.'],
  [
    'chill-start-not-shown.next+askedAt+from',
    'Answer “Into the chiller” with its time, or hold the lot. A core read below 130 °F in that time shows it too.',
  ],
  ['chill-start-in-time.margin', '2 min to spare'],
  ['chill-start-in-time.because', 'Chilling began 1 h 45 min after cooking; 1 h 30 min are allowed.'],
  [
    'chill-start-in-time.because+cold',
    'Chilling began 1 h 45 min after cooking; 1 h 30 min are allowed. Before that, 30 min after cooking, the core was at 120 °F or below.',
  ],
  ['chill-start-too-late.margin', '15 min too long'],
  ['chill-start-too-late.because', 'Chilling began 1 h 45 min after cooking; 1 h 30 min are allowed.'],
  [
    'chill-start-too-late.because+cold',
    'Chilling began 1 h 45 min after cooking; 1 h 30 min are allowed. Before that, 30 min after cooking, the core was at 120 °F or below.',
  ],
  ['chill-start-too-late.next', 'Hold the lot and follow the corrective action of the plan.'],
  ['chill-start-to-come.because', 'Chilling is said to have begun later than that was recorded: it shows nothing.'],
  ['chill-start-to-come.next', 'Correct the time at “Into the chiller”, or hold the lot.'],
  ['chill-start-before-the-end.because', 'Chilling is said to have begun 1 h 45 min before cooking ended.'],
  ['chill-start-before-the-end.next', 'Check the two times: correct the one at “Into the chiller”, or the time cooking ended.'],
  ['rescue', '130 → 80 °F can still be met: 80 °F within 25 min, 60 °F an hour on average.'],
  ['rescue-by-half-way', '130 → 80 °F can still be met: 80 °F within 25 min, 60 °F an hour on average, at most 91.1 °F after 12 min.'],
  ['rescue-too-late', '130 → 80 °F can no longer be met by chilling: its time is over. Only readings taken in time could show it.'],
  ['rescue-chiller-too-warm', '130 → 80 °F cannot be met in this chiller: it is no colder than 80 °F. Use a colder one.'],
  ['take-less-binder', 'Take less of it before anything is mixed.'],
  ['replace-less', 'Replace less of the accelerator.'],
  ['aim-at-less', 'Aim at less, or pump less, before the pickle is made.'],
  ['weigh-more', 'Weigh more of it, or take another source.'],
  ['weigh-less', 'Weigh less of it.'],
  ['less-phosphate', 'Take less phosphate, or pump less, before the pickle is made.'],
  ['less-water', 'Take less water, or dry it further, and analyse again before it is labelled so.'],
])('%s: %s', (key, text) => {
  expect(toldBy('en', key)).toBe(text);
});

test('every text is among them', () => {
  expect(keys).toHaveLength(176);
});

test.each(keys)('%s is told in Spanish, with every figure that it takes', (key) => {
  const text = toldBy('es', key);
  expect(text).toBeTruthy();
  expect(text).not.toMatch(/[{}]|NaN|undefined/);
});

test('one reading is not many', () => {
  const told = spoken(allWords.verdicts.en, { language: 'en', timeZone: 'UTC', timeStyle: 'US' });
  expect(told('cannot-be', { count: 1 })).toBe('1 reading left out: the value or its time cannot be true.');
  expect(told('set-aside', { count: 1 })).toBe('1 reading left out: a person said that it was not of the core.');
  expect(told('no such code')).toBeUndefined();
});
