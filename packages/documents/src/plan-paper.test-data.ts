import type { PlanPaperData } from './plan-paper-data';
import { aSheet, at } from './samples.test-data';

/** An invented plan of two steps and one control point. */
export function aPlanPaper(plan: Partial<PlanPaperData> = {}): PlanPaperData {
  return {
    sheet: aSheet(),
    title: 'Cured, smoked, cooked sausage',
    product: 'Smoked ring sausage with marjoram',
    version: 3,
    stands: 'in force',
    because: 'Lots are made by this version.',
    description: [
      { label: 'Intended use', value: 'Ready to eat' },
      { label: 'Use by', value: '42 days' },
    ],
    madeOf: { label: 'Formula 5', value: 'Pork shoulder 70 %, beef trim 30 %, curing salt 0.25 %' },
    steps: [
      {
        name: 'Receiving',
        points: [],
        hazards: [
          {
            kind: 'biological',
            what: 'Pathogens on raw meat',
            likely: false,
            because: 'Smoking kills what the door lets in',
            control: 'Temperature at receipt',
          },
        ],
      },
      {
        name: 'Smoking and cooking',
        points: [{ number: 'CCP 1', critical: true }],
        hazards: [
          {
            kind: 'biological',
            what: 'Survival of Salmonella',
            likely: true,
            because: 'Raw meat may carry it',
            control: 'Cooking',
          },
        ],
      },
    ],
    controlPoints: [
      {
        number: 'CCP 1',
        name: 'Cooking',
        critical: true,
        step: 'Smoking and cooking',
        hazard: 'Survival of Salmonella',
        limits: [
          {
            printed: '≥ 145 °F for 4 min',
            rows: ['144 °F for 5 min', '145 °F for 4 min'],
            judged: 'More than 30 min between two readings leaves it undetermined.',
            source: {
              citation: 'FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A)',
              edition: 'December 2021',
              confirmed: true,
            },
          },
        ],
        monitoring: { what: 'core temperature', how: 'probe', howOften: 'every cook', fewest: 'at least every 30 min', who: 'operator' },
        correctiveAction: 'Go on cooking.',
        verification: 'Probes checked in ice water.',
      },
    ],
    notes: 'Kept with the support file.',
    written: { by: 'Nora Vale', at: at(1, 8) },
    adopted: { by: 'Nora Vale', at: at(2, 8), statement: 'I accept it as the plan of this establishment.' },
    supersedes: { version: 2, adopted: { by: 'Nora Vale', at: at(1, 9) } },
    cautions: [],
    ...plan,
  };
}
