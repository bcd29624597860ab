import type { DeviationReportData } from './deviation-report-data';
import { chillFigure } from './figure/curves.test-data';
import { aDeviation, aSheet, reading } from './samples.test-data';

export function aDeviationReport(report: Partial<DeviationReportData> = {}): DeviationReportData {
  return {
    sheet: aSheet(),
    lot: { code: 'RS-250904-1', product: 'Smoked ring sausage with marjoram' },
    hazard: 'Growth of Clostridium perfringens and Clostridium botulinum from surviving spores',
    preparedAction: 'Hold the lot, chill it at once, find the cause, and ask the process authority before any release.',
    deviation: aDeviation(),
    readings: (chillFigure.series[0]?.points ?? [])
      .slice(0, 10)
      .map(({ at: taken, value }) => reading({ at: taken, value: value.toFixed(1), what: 'core, middle of the rack' })),
    ...report,
  };
}
