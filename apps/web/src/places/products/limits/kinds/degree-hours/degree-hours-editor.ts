import { degreeHoursFahrenheit, type DegreeHoursLimit, type TemperatureUnit } from '@larderbook/haccp';
import { durationText, secondsOf, type DurationText } from '../../duration-text';
import { counted, typed } from '../../typed';
import type { Editor } from '../editor';
import { DegreeHoursFields } from './degree-hours-fields';

export type ClassDraft = { top: string; isTopIncluded: boolean; most: string };
export type DegreeHoursDraft = {
  kind: 'degreeHours';
  unit: TemperatureUnit;
  base: string;
  pH: string;
  classes: ClassDraft[];
  gap: DurationText;
};

export const degreeHoursEditor: Editor<DegreeHoursLimit, DegreeHoursDraft> = {
  empty: () => draftOf({ kind: 'degreeHours', ...degreeHoursFahrenheit }),
  draftOf,
  figuresOf: ({ unit, base, pH, classes, gap }) => ({
    base: degreeOf(base, unit),
    pH: { thousandths: counted(pH, 3) },
    classes: classes.map(({ top, isTopIncluded, most }) => ({
      top: top === '' ? undefined : degreeOf(top, unit),
      isTopIncluded,
      most: counted(most, 0),
    })),
    longestGapSeconds: secondsOf(gap),
  }),
  Fields: DegreeHoursFields,
};

function draftOf({ kind, base, pH, classes, longestGapSeconds }: DegreeHoursLimit): DegreeHoursDraft {
  return {
    kind,
    unit: base.unit,
    base: typed(base.hundredths, 2),
    pH: typed(pH.thousandths, 3),
    classes: classes.map(({ top, isTopIncluded, most }) => ({ top: typed(top?.hundredths, 2), isTopIncluded, most: String(most) })),
    gap: durationText(longestGapSeconds),
  };
}

function degreeOf(text: string, unit: TemperatureUnit) {
  const hundredths = counted(text, 2);
  return hundredths === undefined ? { unit } : { hundredths, unit };
}
