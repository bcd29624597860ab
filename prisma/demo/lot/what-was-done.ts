import type * as contract from '@larderbook/contracts';

/** One decision about product; how it was destroyed, where it was condemned. */
export type Decided = Pick<contract.InputOf<typeof contract.recordDisposition>, 'decision' | 'reason' | 'basis'> & {
  /** Pounds; left out, all that is left to decide. */
  pounds?: number;
  destroyed?: string;
};

/** What was done about one missed limit, in the words of the people who did it, and what became of the product. */
export type Settled = {
  action: contract.CorrectiveAction;
  decisions: Decided[] /** Somebody outside has to answer first. */;
  waitsForALetter?: true;
};

export const weighedFromTheWrongSlip: Settled = {
  action: {
    form: 'critical',
    cause: 'The slip of the last lot still hung at the bench scale and the curing salt was weighed from it. Slip taken down and torn up.',
    control:
      'Another bone-in shoulder trimmed and put in before anything was mixed. Worked out again: inside the limit. Scale tried with its 200 g weight, right.',
    prevention: 'No paper slips at the scale any more: the target is read off this lot, and whoever trims reads it aloud.',
    product: 'Meat and curing salt lay in two tubs on the mixing table, nothing was mixed. Held until the second working out.',
  },
  decisions: [
    {
      decision: 'release',
      basis: 'worked on and measured again',
      reason: 'More trimmed meat in the block; ppm worked out again from both weights and within the limit.',
    },
  ],
};

export const icedCoil: Settled = {
  action: {
    form: 'critical',
    cause:
      'Coil of the blast chiller iced over, hardly any air. Nell found it when the trays would not come down. Thawed with the hose, drain heater was off: switched on again.',
    control: 'Chiller run empty for an hour, 33 °F at the door and at the back. The next stew gets a reading every ten minutes.',
    prevention:
      'Coil and drain are looked at before the kettle goes on; it is on the opening card now. Refrigeration man comes every quarter.',
    product: 'All trays tagged and pushed to the left wall of the walk-in, none portioned. Condemned the same evening.',
  },
  decisions: [
    {
      decision: 'condemn',
      reason: 'More than two hours between 135 and 70 °F in deep trays, and no support for anything else.',
      destroyed: 'Tipped into the rendering drum, blue dye over it, lid locked. Docket of the renderer in the office.',
    },
  ],
};

export const doorAjar: Settled = {
  waitsForALetter: true,
  action: {
    form: 'critical',
    cause:
      'Chiller door had not latched, a trolley wheel stood in it. Found when the core still stood above 80 °F after more than two hours; until then it was taken for a thick piece. Wheel moved, door shut; the gasket is whole.',
    control:
      'Air back at 34 °F within twenty minutes and the cores came down as usual from then on. Next roast followed every ten minutes.',
    prevention: 'Chalk line on the floor where the trolley has to stand, and the door alarm set from 30 minutes to 3.',
    product: 'Lot tagged and kept on its trolley in the walk-in, nothing sliced. Curve sent to the process authority the same evening.',
  },
  decisions: [
    {
      decision: 'condemn',
      pounds: 8.35,
      reason: 'The two thickest pieces: the letter speaks for pieces up to 4 in and these were 5.',
      destroyed: 'Slashed, dyed green, into the rendering barrel. Docket 2291 of the renderer.',
    },
    {
      decision: 'release',
      basis: 'process authority',
      reason: 'Letter on this curve: predicted growth of C. perfringens 0.4 log, under 1 log, for pieces up to 4 in. Folder 3 (invented).',
    },
  ],
};

export const rollOfTheStew: Settled = {
  action: {
    form: 'prerequisite',
    done: 'Run stopped. The labeller still had the roll of the stew on it; wrong labels peeled off, counted and binned, right roll on, first ten read line by line.',
    product:
      'Every package of the run taken back from the crates. Wheat stands on the wrong label and is not in this sausage; nothing was missing from it. Two packages tore.',
  },
  decisions: [
    {
      decision: 'condemn',
      pounds: 1.5,
      reason: 'Film of two packages tore with the label and they had lain open on the table.',
      destroyed: 'Cut open and into the rendering barrel with the trim of the day.',
    },
    {
      decision: 'release',
      basis: 'worked on and measured again',
      reason: 'Each of the others relabelled, and the label read again by Petra before the crate was shut.',
    },
  ],
};
