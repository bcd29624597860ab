export type * from './sheet-data';
export type * from './entry-data';
export type * from './lot-record-data';
export type * from './monitoring-log-data';
export type * from './deviation-report-data';
export { lotRecord } from './lot-record';
export { monitoringLog } from './monitoring-log';
export { deviationReport } from './deviation-report';
