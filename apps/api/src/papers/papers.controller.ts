import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { deviationReport, lotRecord, monitoringLog, planPaper, supplierLotSheet } from '@larderbook/documents';
import type { Language } from '@larderbook/messages';
import type { Look } from '../ledger/entries';
import { Clock } from '../platform/clock';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { gatherDeviationReport } from './gather-deviation-report';
import { gatherLotRecord } from './gather-lot-record';
import { gatherMonitoringLog } from './gather-monitoring-log';
import { gatherPlanPaper } from './gather-plan-paper';
import { gatherSupplierLot } from './gather-supplier-lot';
import { pdfReply } from './pdf-reply';

@Controller('api/v1')
export class PapersController {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
  ) {}

  @Route(contract.printLotRecord)
  async lotRecord(@Input() { lotId, language }: InputOf<typeof contract.printLotRecord>, @SignedIn() person: Person) {
    const by = reading(person, language);
    const record = await this.db.transaction(by, (tx) => gatherLotRecord(tx, lotId, by, this.clock.now()));
    return pdfReply(lotRecord(record), record.lot.product, record.lot.code, 'lot record');
  }

  @Route(contract.printMonitoringLog)
  async monitoringLog(@Input() input: InputOf<typeof contract.printMonitoringLog>, @SignedIn() person: Person) {
    const by = reading(person, input.language);
    const look: Look = (work) => this.db.transaction(by, work);
    const log = await gatherMonitoringLog(look, input, by, this.clock.now());
    return pdfReply(monitoringLog(log), log.product, log.controlPoint.name, 'log', input.from, 'to', input.to);
  }

  @Route(contract.printDeviationReport)
  async deviationReport(@Input() { deviationId, language }: InputOf<typeof contract.printDeviationReport>, @SignedIn() person: Person) {
    const by = reading(person, language);
    const report = await this.db.transaction(by, (tx) => gatherDeviationReport(tx, deviationId, by, this.clock.now()));
    const { lot, deviation } = report;
    return pdfReply(deviationReport(report), lot.product, lot.code, 'deviation', deviation.number.replace('No. ', ''));
  }

  @Route(contract.printPlan)
  async plan(@Input() { planId, language }: InputOf<typeof contract.printPlan>, @SignedIn() person: Person) {
    const by = reading(person, language);
    const paper = await this.db.transaction(by, (tx) => gatherPlanPaper(tx, planId, by, this.clock.now()));
    return pdfReply(planPaper(paper), paper.product, 'plan', String(paper.version));
  }

  @Route(contract.printSupplierLot)
  async supplierLot(@Input() input: InputOf<typeof contract.printSupplierLot>, @SignedIn() person: Person) {
    const by = reading(person, input.language);
    const lot = await this.db.transaction(by, (tx) => gatherSupplierLot(tx, input, by, this.clock.now()));
    return pdfReply(supplierLotSheet(lot), lot.items, lot.supplierLot, 'supplier lot');
  }
}

/** Whoever prints may choose another language than their own. */
const reading = (by: Person, language: Language = by.voice.language): Person => ({ ...by, voice: { ...by.voice, language } });
