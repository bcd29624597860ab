/** What the pre-shipment review of a lot finds, and what to do about it. */
export const reviewFindings = {
  'nothing-put-in': 'Nothing has been put into this lot.',
  'put-in-the-meat': 'Put in the meat from its delivery.',
  'nothing-packed': 'Nothing of this lot has been packed.',
  'pack-it': 'Pack it: the review is of what will leave.',

  // control points
  'point-met': '{point}: every limit is met.',
  'point-not-recorded': '{point}: nothing was recorded.',
  'point-running': '{point}: still running.',
  'point-missed': '{point}: missed.',
  'point-undetermined': '{point}: undetermined.',
  'point-missed-settled': '{point}: missed, and settled.',
  'point-undetermined-settled': '{point}: undetermined, and settled.',
  'finish-then-review': 'Finish it, then review.',
  'settle-its-deviation': 'Settle its deviation and close it.',
  'open-a-deviation': 'Open a deviation for it, settle it and close it.',
  'open-about-substance': 'Open a deviation about {substance}, settle it and close it.',

  // fewer readings than the plan asks for
  'too-few-in-time':
    '{point}: {count, plural, one {# reading} other {# readings}}, {longest} at the longest without one, where the plan asks for one at least every {every}: {missing} fewer than it asks.',
  'too-few-in-lot':
    '{point}: {count, plural, one {# reading} other {# readings}}, where the plan asks for {times, plural, one {one at least once} other {one at least # times}} in a lot: {missing} fewer than it asks.',
  'probes-not-read': '{point}: the plan names {probes}, and nobody read it.',
  'look-for-readings': 'Look whether it was measured and not recorded, or say in the statement why fewer are enough.',

  // deviations
  'closed-decided': 'Deviation {number} is closed: {decided}.',
  'closed-without-product': 'Deviation {number} is closed; there was no product to decide about.',
  'decided-release': '{weight} released',
  'decided-rework': '{weight} to be reworked',
  'decided-condemn': '{weight} condemned',
  'decided-return': '{weight} sent back',
  'decided-recall': '{weight} called back',
  'record-the-action': 'Record the corrective action.',
  'decide-what-becomes': 'Decide what becomes of {weight}.',
  'close-it': 'Close it.',

  // what went in
  'meat-not-put-in': '{item} stands in the formula and was not put in.',
  'put-it-in': 'Put it in, or say in the statement why it was left out.',
  'ingredient-not-weighed-in': '{item} stands in the formula and was not weighed in.',
  'weigh-it-in': 'Weigh it in, or say in the statement why it was left out.',
  'too-little-weighed-in': '{item}: {weighed} was weighed in for a target of {target}, {off} too little.',
  'too-much-weighed-in': '{item}: {weighed} was weighed in for a target of {target}, {off} too much.',
  'too-little-in-parts': '{item}: {weighed} was weighed in for a target of {target}, in {count} weighings ({parts}), {off} too little.',
  'too-much-in-parts': '{item}: {weighed} was weighed in for a target of {target}, in {count} weighings ({parts}), {off} too much.',
  'void-or-correct-weighing': 'Void or correct the weighing if it is wrong. If so much went in, say in the statement that it may.',
  'allergens-beside': '{item} went in beside the formula and brings {allergens}, which nothing in the formula holds.',
  'look-at-the-label': 'Make sure that the label of these packages names it, or keep them back.',

  // what became of it
  'so-much-lost': '{lost} of {wentIn} is lost.',
  'so-much-lost-recorded': '{lost} of {wentIn} is lost, of it {weighed} recorded as loss.',
  'so-little-lost': 'Only {lost} is lost of {wentIn} that went in.',
  'so-little-lost-recorded': 'Only {lost} is lost of {wentIn} that went in, of it {weighed} recorded as loss.',
  'more-than-went-in': '{more} more came out than all of {wentIn} that went in.',
  'more-than-went-in-recorded': '{more} more came out than all of {wentIn} that went in, and {weighed} is recorded as loss.',
  'more-gone-than-expected': 'The formula expects {yield} to be left, a loss of {least} to {most}: {beyond} more is gone than it explains.',
  'more-left-than-expected':
    'The formula expects {yield} to be left, a loss of {least} to {most}: {beyond} more came out than it explains.',
  'count-and-weigh-again': 'Count and weigh the packages again, record what was taken out, or say in the statement what became of it.',
  'weigh-again': 'Weigh the packages again, and look for what went in without a record.',
  'left-under-review':
    '{count} of {code} left with shipment {number} to {customer} under the review of {who}, which was taken back: {reason}',
  'consider-a-recall': 'Consider a recall of them.',

  // entries that were odd, corrected, voided or clarified
  'entry-flagged': '{entry} by {who}: {flags}.',
  'entry-corrects': '{entry} by {who}: corrects an earlier entry ({reason}).',
  'entry-corrects-flagged': '{entry} by {who}: {flags}; corrects an earlier entry ({reason}).',
  'entry-voided': '{entry} by {who}: voided by {by} ({reason}).',
  'thing-corrected': '{thing}: corrected by {who} ({reason}).',
  'thing-voided': '{thing}: voided by {who} ({reason}).',
  'entry-clarified': '{entry}: {word}. {reason} ({who})',
} as const;
