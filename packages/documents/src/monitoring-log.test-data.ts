import type { MonitoredReadingData, MonitoringLogData } from './monitoring-log-data';
import { aSheet, aVerdict, at, cooking } from './samples.test-data';

export function aLoggedReading(row: Partial<MonitoredReadingData> = {}): MonitoredReadingData {
  return {
    kind: 'reading',
    at: at(4, 11, 50),
    by: 'Tomas Reed',
    initials: 'TR',
    lot: 'RS-250904-1',
    product: 'Smoked ring sausage with marjoram',
    value: '151.5',
    unit: '°F',
    limit: '≥ 145 °F for 4 min',
    what: 'core, thickest link',
    instrument: 'T-03',
    verdict: aVerdict(),
    ...row,
  };
}

export function aMonitoringLog(log: Partial<MonitoringLogData> = {}): MonitoringLogData {
  return {
    sheet: aSheet(),
    period: { from: at(1, 0), to: at(30, 23, 59) },
    controlPoint: {
      number: 'CCP 1',
      name: 'Cooking',
      critical: true,
      step: 'smokehouse',
      hazard: 'Survival of Salmonella, Listeria monocytogenes and other pathogens in the core',
      limits: [{ printed: '≥ 145 °F for 4 min', source: cooking }],
      monitoring: {
        what: 'core temperature of the thickest link on each rack',
        how: 'probe thermometer',
        howOften: 'every cook',
        who: 'operator',
      },
    },
    instruments: [
      {
        name: 'T-03',
        kind: 'probe thermometer',
        checks: [{ by: 'Nora Vale', at: at(1, 8), result: 'reads 32.2 °F in ice water, within ± 1 °F' }],
        flagged: [],
      },
    ],
    product: 'Smoked sausage ring',
    rows: [aLoggedReading()],
    reviews: [],
    ...log,
  };
}
