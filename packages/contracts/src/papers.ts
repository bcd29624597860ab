import { z } from 'zod';
import { day, id, language } from './fields';
import { everyone, route } from './route';
import { traceSupplierLot } from './trace';

/** Without it, the person's own language. */
const inLanguage = z.object({ language: language.optional() });
const pdf = { stream: 'application/pdf' } as const;
export const printLotRecord = route({
  method: 'GET',
  path: '/lots/:lotId/lot-record.pdf',
  summary: 'The lot record on paper',
  roles: everyone,
  query: inLanguage,
  returns: pdf,
  problems: ['not-found'],
});
export const printMonitoringLog = route({
  method: 'GET',
  path: '/monitoring-log.pdf',
  summary: 'One control point over a period, with the fields of 9 CFR 417.5',
  roles: everyone,
  query: inLanguage.extend({ controlPointId: id, from: day, to: day }),
  returns: pdf,
  problems: ['not-found', 'period-too-long'],
});
export const printDeviationReport = route({
  method: 'GET',
  path: '/deviations/:deviationId/report.pdf',
  summary: 'One deviation with its corrective action on paper',
  roles: everyone,
  query: inLanguage,
  returns: pdf,
  problems: ['not-found'],
});
export const printPlan = route({
  method: 'GET',
  path: '/plans/:planId/paper',
  summary: 'One version of a HACCP plan on paper',
  roles: everyone,
  query: inLanguage,
  returns: pdf,
  problems: ['not-found'],
});
export const printSupplierLot = route({
  method: 'GET',
  path: '/supplier-lot-traces/paper',
  summary: 'Every delivery of a supplier’s lot number on paper, and where it went',
  roles: everyone,
  query: traceSupplierLot.query.extend(inLanguage.shape),
  returns: pdf,
  problems: ['not-found'],
});
