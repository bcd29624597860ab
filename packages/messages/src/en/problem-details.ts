import { lotCodeFaults } from './lot-code-faults';
import { oddReadings } from './odd-readings';

/** What is told of the case that a problem is about, beside what the problem itself says. */
export const problemDetails = {
  ...lotCodeFaults,
  ...oddReadings,
  // requests
  'not-readable': 'The request could not be read: {said}',
  'too-deep': 'This is nested too deeply.',
  'cannot-be-kept': 'This text holds a character that cannot be kept.',
  'writes-carry-a-header': 'Writes carry the header x-larderbook.',
  'page-of-elsewhere': 'The page is of {page}, Larderbook is at {here}.',
  'review-found': '{found}',
  'unusual-at-receipt': '{entered} is unusual for {item} at receipt.',
  'check-thermometer': 'Check the thermometer and read again.',
  'not-met-at-receipt': '{name} at {read} does not meet the limit it is received by.',
  'place-of-another': '“{place}” is no place that {jurisdiction} tells apart.',
  'place-without-jurisdiction': 'Say whose limits count before the place “{place}”.',
  'edition-of-another': '“{edition}” is no edition of {jurisdiction}.',
  'edition-without-jurisdiction': 'Say whose limits count before the edition “{edition}”.',
  'figure-not-read':
    '{point}: nobody here has read its figure in the source ({citation}). Write edition and page where you have read it, or your own support and where it is filed; or choose another limit.',
  'option-not-supported':
    '{point}: {asked} Write which gap your product stands in, or your own support and where it is filed; or choose another limit.',
  'cannot-be-used': '{name}: {said}',

  // the shop
  'not-your-role':
    'This is for {may, select, owner {the owner alone} owner_reviewer {the owner or a reviewer} other {people who record entries}}.',
  'password-not-right': 'The present password is not right.',
  'user-name-is': 'The user name is {userName}.',
  'wait-after-tries': 'After {count} wrong tries wait {time}.',
  'no-such-person': 'There is no such person in this shop.',
  'only-owner': '{name} is the only owner. Make somebody else an owner first.',

  // what is not there
  'no-such-lot': 'There is no such lot in this shop.',
  'no-such-earlier-lot': 'There is no such earlier lot in this shop.',
  'no-such-delivery': 'There is no such delivery in this shop.',
  'no-such-item': 'There is no such item in this shop.',
  'no-such-supplier': 'There is no such supplier in this shop.',
  'no-such-customer': 'There is no such customer in this shop.',
  'no-such-instrument': 'There is no such instrument in this shop.',
  'no-such-product': 'There is no such product in this shop.',
  'no-such-formula': 'There is no such formula in this shop.',
  'no-such-plan': 'There is no such plan in this shop.',
  'no-such-entry': 'There is no such entry in this shop.',
  'no-such-decision': 'There is no such decision in this shop.',
  'no-such-closing': 'There is no such closing in this shop.',
  'no-such-review': 'There is no such review in this shop.',
  'nothing-to-trace': 'There is no such delivery, lot or packing.',
  'no-delivery-of-lot': 'There is no delivery under this lot number.',
  'point-not-in-plan': 'The plan of this lot has no such control point.',
  'point-never-adopted': 'No adopted plan has this control point.',
  'no-such-set': 'There is no set of limits “{set}”.',
  'line-names-no-item': 'Line {line} names an item that is not in this shop.',
  'line-names-no-packages': 'Line {line} names packages that are not in this shop.',

  // corrections
  'say-why-corrected': 'Say why it is corrected; both are kept.',
  'no-record-to-correct': 'There is no such record to correct in this shop.',
  'no-entry-to-correct': 'This lot has no such entry to correct.',
  'no-end-to-correct': 'This stage has no such end to correct.',
  'no-check-to-correct': 'This instrument has no such check to correct.',
  'no-packages-to-correct': 'This lot has no such packages to correct.',
  'no-action-to-correct': 'This deviation has no such corrective action to correct.',
  'no-destruction-to-correct': 'This product has no such destruction to correct.',
  'nothing-taken-out': 'Nothing of the kind was taken out here.',
  'was-voided': 'It was voided. Record it anew.',
  'of-another-point': 'The reading to correct is of another control point.',
  'something-was-taken': 'Something was taken of {code}. Void or correct that first: where it went in, or what was taken out.',
  'more-was-taken': '{taken} of {code} were taken. Correct what was taken first: where it went in, or what was taken out.',
  'taken-before-refused': '{taken} of {code} were taken. Correct or void that first, then say that it was refused.',
  'taken-as-another-kind':
    '{taken} of {code} were used as {used, select, meat {a meat item} ingredient {an ingredient} other {packaging material}}; {name} is {kind, select, meat {a meat item} ingredient {an ingredient} other {packaging material}}. Void that first.',
  'packages-were-shipped':
    '{count, plural, one {# package of {code} was} other {# packages of {code} were}} shipped. Correct or void the shipment first.',
  'weight-called-back': '{weight} of lot {code} were called back. Void that decision first, then correct what had left.',
  'only-so-much-loose': 'Only {left} of the lot is still loose. Correct or void what was packed, taken out or used of it first.',
  'held-through-it': 'Deviation {number} holds this lot through it. Decide what becomes of the product and close it, then correct this.',
  'closed-with-it': 'Deviation {number} was closed with it. Correct it, or take the closing back first.',
  'destruction-recorded': 'Its destruction is recorded. Void that first.',
  'reworked-already': 'Some of it was put into a later lot as rework. Void or correct that first: where it went in.',

  // readings
  'say-how-you-know': 'Say how you know it; it is kept beside the readings.',
  'no-such-reading': 'This lot has no such reading.',
  'chosen-of-another-point': 'A reading that was chosen is of another control point.',
  'correct-it-instead': '{point} is not a series of readings. Correct the reading instead.',
  'choose-its-correction': 'This reading was corrected. Choose its correction.',
  'judged-by-no-limit': '{probe} is judged by no limit; nothing is in doubt.',
  'chosen-still-to-come': 'A reading that was chosen is still to come. Say it once its time has come, or correct it.',
  'finished-at': 'It was finished {at}. Correct that, if the time is wrong.',
  'nothing-to-finish': '{point} is not a series of readings; there is nothing to finish.',
  'ahead-of-the-clock': 'That is dated {ahead} ahead of the clock here. Check the date and the time.',
  'judged-from-weighings': '{point} is judged from what is weighed into the lot.',
  'asks-for-number': '{point} asks for {units}, not for yes or no.',
  'asks-for-yes-or-no': '{point} asks for yes or no, and what was seen.',
  'asks-for-other-unit': '{point} asks for {units}, not for {unit}.',
  'two-decimals-of-temperature': 'A temperature has at most two decimals.',
  'is-it-really-so': 'Is it really so?',
  'did-you-mean': 'Did you mean {meant}?',
  'a-reviewer-signs': 'The review is signed by a reviewer or the owner.',
  'made-records-of-it': 'You made records of this lot. Somebody who made none of them signs its review.',
  'still-missing-or-open': 'Something is still missing or open.',
  'cannot-be-outside': '{value} cannot be: what is measured here lies between {lowest} and {highest}.',
  'cannot-be-check': '{value} cannot be. Check the instrument.',
  'another-range-expected': '{entered} was entered; here {least} to {most} would be expected.',
  'no-food-is-so': '{entered} was entered; no food is that hot or cold.',
  'target-expected': '{entered} was entered; {wanted} would be expected.',
  'little-after-trimming': '{trimmed} is little of {taken} taken.',
  'weighed-before': '{entered} was entered; it weighed {before} before.',

  // receiving
  'received-by-temperature': '{name} is received by temperature.',
  'say-why-refused': 'Say why the delivery is refused.',
  'say-why-accepted': 'Say why it is accepted all the same.',
  'holds-no-substance': '{name} holds no restricted substance.',
  'killed-after-delivery': 'The kill date is after the delivery.',
  'packed-after-delivery': 'The pack date is after the delivery.',
  'packed-before-killed': 'The pack date is before the kill date.',
  'range-of-temperatures': 'Receiving is judged against a range of temperatures: give a least or a most, in °F or °C.',
  'delivery-was-refused': 'Delivery {code} was refused.',

  // lots
  'is-the-lot-itself': '{code} is the lot itself.',
  'contains-it-already': '{source} already contains {code}.',
  'so-much-left': '{left} are left of {code}, {asked} were asked for.',
  'is-no-meat': '{code} is {name}, which is no meat. Weigh it in as an ingredient.',
  'put-in-as-meat': '{name} is meat, not an ingredient. Put it in as meat.',
  'is-packaging': '{name} is packaging, not an ingredient. It is no part of the product.',
  'of-another-item': '{code} is {is}, not {item}.',
  'more-left-than-taken': '{taken} were taken, and {trimmed} are said to be left after trimming.',
  'no-code-free': 'No code of the pattern is free for this day. Give the lot a code by hand.',
  'code-by-hand': 'Give the lot a code by hand, or change the pattern.',
  'product-has-no-formula': '{product} has no formula.',
  'product-has-no-plan': 'No plan has been adopted for {product}.',
  'code-is-taken': 'There is a lot {code} already.',

  // deviations and reviews
  'deviation-is-closed': 'Deviation {number} is closed. Open another if there is more.',
  'form-asked-for':
    'This deviation asks for {form, select, critical {the cause, the control, the prevention and the product: 9 CFR 417.3(a)} prerequisite {what was done, and what becomes of the product} other {segregation, acceptability, the product and a reassessment: 9 CFR 417.3(b)}}.',
  'what-will-differ': 'What will be different this time?',
  'decided-already': 'All of {code} is decided already.',
  'stands-on': 'Deviation {number} stands on {products}.',
  'more-than-has-left': 'The decision is about {asked}. Of {code} {undecided} are still to be decided, and {left} of it have left.',
  'more-than-is-here': 'The decision is about {asked}. Of {code} {undecided} are still to be decided, and {here} of it are here.',
  'at-most-weight': 'At most {most}.',
  'needs-action': 'Deviation {number} still needs its corrective action.',
  'closed-and-changed-since': 'It is closed already; since then a weight was corrected or a decision voided.',
  'still-to-decide':
    'Deviation {number}: {undecided} of {atStake} are still to be decided. What was lost on the way is recorded as a loss.',
  'voided-by-a-reviewer': 'A decision is voided by a reviewer or the owner.',
  'taken-back-by-its-signer': 'A review is taken back by whoever signed it, or by the owner.',

  // packing and shipping
  'use-by-before-packing': 'The use-by {useBy} comes before the day of packing, {packed}.',
  'no-room-to-pack':
    '{count} × {net} are {asked}; of lot {code} {left} can still be packed ({wentIn} went in, {leftTheLot} left it, {packed} are packed).',
  'so-much-to-rework': '{toRework} are to be reworked.',
  'lot-may-not-ship': 'Lot {code}: {because}',
  'standing-unknown': 'It is not known where lot {code} stands.',
  'packages-left':
    '{count, plural, one {# package is} other {# packages are}} left of {code}, {asked, plural, one {#} other {#}} were asked for.',
  'condemned-in-packages': '{condemned} of lot {code} were condemned in their packages.',
  'to-rework-in-packages': '{toRework} of lot {code} are to be reworked.',
  'so-much-may-ship': '{left} may ship, {asked} were asked for.',
  'said-to-have-left': 'It is said to have left {at}.',
  'review-was-signed': 'The review of lot {code} was signed {at}.',

  // plans, formulas and limits
  'version-adopted-before': 'Version {version} was adopted before.',
  'edition-not-own': 'The edition to be replaced is not among your own.',
  'edition-replaced': 'Edition {edition} was replaced by edition {newer}. Start from that one.',
  'no-published-limit': 'There is no published limit {key}.',
  'limit-of-another-kind': '“{title}” is a limit of another kind.',
  'needs-meat': 'A formula needs at least one meat: the meat block is what everything is a percentage of.',
  'meats-add-up': 'The meats add up to {sum}; together they make 100 %.',
  'not-among-meats': '{name} is {kind, select, ingredient {an ingredient} other {packaging material}}; it cannot stand among the meats.',
  'not-among-ingredients':
    '{name} is {kind, select, meat {a meat item} other {packaging material}}; it cannot stand among the ingredients.',
  'substance-not-judged':
    '{item} holds {substance}, and no control point of the plan judges it. Write one with a limit on {substance}, recorded as weighings, and adopt the plan with it.',
  'share-one-id': 'In the plan {one} and {other} share one id; each needs its own.',

  // what keeps a plan from being adopted, and what its owner should know before
  'hazard-not-controlled':
    '{step}: “{hazard}” is likely, but no critical control point controls it. Add one at this step, or name the one that does under its control.',
  'step-not-in-flow': '{point}: its step is not in the flow diagram.',
  'recorded-otherwise':
    '{point}: its limit is judged from {fitting, select, value {one value} curve {a series of readings} weighings {what is weighed in} other {a yes or no}}, but it is recorded as {recorded, select, value {one value} curve {a series of readings} weighings {what is weighed in} other {a yes or no}}.',
  'growth-alone': '{point}: predicted growth is a screening and clears nothing. Put it beside a cooling limit.',
  'loss-mixed': '{point}: give the loss of weight a control point of its own; here temperatures are read.',
  'units-mixed': '{point}: give each unit a control point of its own; one value is read in one unit.',
  'surroundings-without-series': '{point}: what the product lies in is read only with a series of readings.',
  'surroundings-is-a-probe': '{point}: “{probe}” is one of its probes. Give what it lies in another name.',
  'humidity-of-which-cook': '{point}: name the cooking control point that humidity is kept in.',
  'moment-follows-which': '{point}: name the cook that it follows, or nothing where it starts a fermentation.',
  'answer-follows-a-cook': '{point}: “{answer}” has to follow the cook whose end starts the clock.',
  'clock-of-which-cook': '{point}: name the cooking control point whose end starts its clock.',
  'start-follows-nothing': '{point}: “{answer}” records when fermentation begins, so it may follow nothing itself.',
  'start-recorded-where': '{point}: name the control point that records when fermentation begins; without it nothing is met.',
  'made-otherwise': 'The plan is for the process “{process}”, but {product} is made by “{made}”.',
  'source-asks-for-more':
    '{point}: the source of its figure asks for more than the plan does: {leftOut}. Choose the published limit again, or name your own support.',
  'no-chill-start':
    '{point}: its limit asks how soon chilling begins after cooking, but no control point records when it began. Add one that asks for the moment and follows the cook, and let the clock of {point} start with it.',
  'no-freezing-start':
    '{point}: the time is counted by the air of the freezer, but nothing records when the meat went in, and without that nothing is met. Add a control point that asks for the moment, and let the clock of {point} start with it.',
  'no-core':
    '{point}: what is read is stirred or pumped and has no core, so no reading is doubted for how fast it rises or falls. Say so only of what flows, such as a sauce without pieces; a probe left in the air would not be noticed by its speed.',

  // papers
  'last-before-first': 'The last day comes before the first.',
  'days-asked-for': '{count, plural, one {# day was} other {# days were}} asked for.',
} as const;
