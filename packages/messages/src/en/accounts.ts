/** Where a lot stands and why, what a deviation is about, and why packages may or may not leave: wherever they are named. */
export const accounts = {
  'as-worded': '{said}',
  'of-point': '{point}: {said}',

  // what a deviation is about
  'delivery-accepted': 'Delivery {code} of {item} was accepted.',
  'delivery-corrected': 'Delivery {code} was corrected.',

  // a lot on hold
  'deviation-open': 'Deviation {number} is open.',
  'next-record-action': 'Next: record the corrective action.',
  'next-decide': 'Next: decide what becomes of {undecided} of {atStake}.',
  'next-close': 'Next: close it.',
  'more-open': '{count, plural, one {# more is open.} other {# more are open.}}',
  'packages-left-already': 'Packages have already left: consider a recall.',

  // a lot in work
  'next-put-in-meat': 'Next: put in the meat.',
  'next-point': 'Next: {point}. {what}',
  'missed-goes-on': '{point} is missed and goes on. Next: finish it.',
  'point-stands': '{point} {stands, select, running {is running} missed {is missed} other {is undetermined}}.',
  'next-pack': 'Every control point is met or settled. Next: pack it.',
  'all-to-rework': 'All that is left of it was decided to be reworked. Next: put it into a later lot.',

  // a lot that is packed
  'packed-and-settled': 'Packed, and every control point is met or settled.',
  'next-review': 'Next: the pre-shipment review.',
  'next-review-again': 'Next: review it again.',
  'so-many-may-ship': 'The pre-shipment review is signed: {left} of {count, plural, one {# package} other {# packages}} may ship.',
  'so-much-may-ship': 'The pre-shipment review is signed: {weight} of it may ship; what else is packed was condemned or is to be reworked.',
  'not-met-by-now': 'By the rules of now {points} would not be met: look at it again.',
  'packed-since': '{count, plural, one {# package was} other {# packages were}} packed after the review was signed and may not ship.',
  'signed-for-these': 'The pre-shipment review is signed for these packages.',
  'rest-condemned': 'What is left of it was condemned.',
  'rest-condemned-or-to-rework': 'What is left of it was condemned or is to be reworked.',

  // a lot that is gone
  'all-left': '{count, plural, one {The only package has left.} other {All # packages have left.}}',
  'nothing-left': 'Nothing of it is left.',
  'all-condemned': 'All of it was condemned and is held apart. Next: destroy it and record how.',
  'all-destroyed': 'All of it was condemned and destroyed.',

  // what took the clearance of a review back
  'review-taken-back': 'The review was taken back: {reason}',
  'left-under-it': '{count, plural, one {# package has left: consider a recall.} other {# packages have left: consider a recall.}}',
  'since-deviation': 'Deviation {number} was opened after the review was signed.',
  'since-reading':
    'A reading at {point} {did, select, recorded {was recorded} corrected {was corrected} other {was voided}} after the review was signed.',
  'since-stage-end': 'The end of {point} {did, select, recorded {was recorded} other {was corrected}} after the review was signed.',
  'since-clarification': 'Something was said of readings at {point} after the review was signed.',
  'since-weighing': 'A weighing {did, select, recorded {was recorded} other {was corrected}} after the review was signed.',
  'since-input': 'An input {did, select, recorded {was recorded} other {was corrected}} after the review was signed.',
  'since-packing': 'Packing {code} {did, select, recorded {was recorded} other {was corrected}} after the review was signed.',
  'since-removal':
    'What was taken out ({removed}) {did, select, recorded {was recorded} other {was corrected}} after the review was signed.',
  'since-delivery': 'Delivery {code} {did, select, recorded {was recorded} other {was corrected}} after the review was signed.',
  'since-check': 'The check of {instrument} {did, select, failed {has failed} other {was corrected}} after the review was signed.',
  'since-decision':
    'The decision on deviation {number} {did, select, recorded {was recorded} corrected {was corrected} other {was voided}} after the review was signed.',
  'since-action':
    'The corrective action of deviation {number} {did, select, corrected {was corrected} other {was voided}} after the review was signed.',
  'since-closing': 'The closing of deviation {number} was taken back after the review was signed.',
} as const;
