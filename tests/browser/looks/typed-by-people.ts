import { limitSets } from '@larderbook/haccp';

/** Where a reply of the server holds what people typed, in the words in which they typed it. */
export const typed: readonly RegExp[] = [
  /(?<!set|estimate|figures\[\])\.name$/, // those of published laws of kill and growth are messages
  /\.(userName|itemName|productName|planTitle|lotCode|packingCode|code|lotCodePattern|timeZone)$/,
  /\.(person|by|adoptedBy|recordedBy(\[\])?|customer|supplier|supplierLot|item|document|contact|address|station)$/,
  /\.(hash|probe|probes\[\]|storage|ingredient)$/,
  /\.(seen|reason|method|decidedBecause)$/,
  /\.action\.\w+$/,
  /\.description$/, // of a deviation that a person opened
  /^\.note$|(removals\[\]|lot|closing|dispositions\[\])\.note$/,
  /^\.statement$|(review|reviews\[\]|plan|limit)\.statement$/,
  /(nodes\[\]|start|found\[\]|balance\[\]|products\[\]|from)\.what$/, // what deliveries and lots are of
  // a plan
  /(content|plan|plans\[\]|usedBy\[\])\.title$/,
  /\.content\.(process|intendedUse|notes)$/,
  /\.hazards\[\]\.(what|because|control)$/,
  /\.monitoring\.(what|how|howOften|who)$/,
  /\.(hazard|correctiveAction|verification|authority)$/,
  /\.support\.(own|read|gap)$/,
  /\.inPlan\.(at|from)\[\]$/,
  /\.rule$/, // of an answer: the statement of the plan
];

/** Where it holds what a source prints. */
export const printed: readonly RegExp[] = [
  /(source|sources\[\]|published\[\])\.(citation|edition)$/,
  /\.(paragraph|printed|organism|url|edition)$/,
];

/** How published sets print their amounts, which stands within what a limit says. */
export const amounts: readonly string[] = limitSets.flatMap(({ rows }) =>
  rows.flatMap(({ limit }) => ('printed' in limit && limit.printed ? [limit.printed] : [])),
);
