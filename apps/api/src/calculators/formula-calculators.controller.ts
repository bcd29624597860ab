import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import {
  batchByPercent,
  bindersInProduct,
  citricForAccelerator,
  cureForPickle,
  nitriteFromNaturalSource,
  percentAndWeight,
  phosphateInPumpedMeat,
  pumpByWeight,
  strengthOfBrine,
  waterInFinishedProduct,
  waterInFormula,
} from '@larderbook/haccp';
import { Input, Route } from '../platform/contract-route';
import { batchFrom } from './batch-from';
import { publishedLimit } from './published-limit';
import { worked } from './worked';

/** What goes into a product, worked out without a lot. Nothing is read from the book and nothing is written. */
@Controller('api/v1')
export class FormulaCalculatorsController {
  @Route(contract.workOutPickle)
  pickle(@Input() given: contract.InputOf<typeof contract.workOutPickle>) {
    return worked(cureForPickle(given));
  }

  @Route(contract.workOutBrine)
  brine(@Input() given: contract.InputOf<typeof contract.workOutBrine>) {
    return worked(strengthOfBrine(given));
  }

  @Route(contract.workOutPump)
  pump(@Input() given: contract.InputOf<typeof contract.workOutPump>) {
    return worked(pumpByWeight(given));
  }

  @Route(contract.workOutPhosphate)
  phosphate(@Input() given: contract.InputOf<typeof contract.workOutPhosphate>) {
    return worked(phosphateInPumpedMeat(given));
  }

  @Route(contract.workOutBinders)
  binders(@Input() given: contract.InputOf<typeof contract.workOutBinders>) {
    return worked(bindersInProduct(given));
  }

  @Route(contract.workOutCitric)
  citric(@Input() given: contract.InputOf<typeof contract.workOutCitric>) {
    return worked(citricForAccelerator(given));
  }

  @Route(contract.workOutNaturalNitrite)
  naturalNitrite(@Input() given: contract.InputOf<typeof contract.workOutNaturalNitrite>) {
    const { certificateLot, percent, plusMinus, as, limit: key, ...weighed } = given;
    const { limit } = publishedLimit(key, 'concentration');
    const certificate = { ingredientLot: certificateLot, percent, plusMinus, as };
    return worked(nitriteFromNaturalSource({ ...weighed, certificate, limit }));
  }

  @Route(contract.workOutWaterInFormula)
  waterInFormula(@Input() given: contract.InputOf<typeof contract.workOutWaterInFormula>) {
    return worked(waterInFormula(given));
  }

  @Route(contract.workOutWaterInProduct)
  waterInProduct(@Input() given: contract.InputOf<typeof contract.workOutWaterInProduct>) {
    return worked(waterInFinishedProduct(given));
  }

  @Route(contract.workOutPercent)
  percent(@Input() given: contract.InputOf<typeof contract.workOutPercent>) {
    return worked(percentAndWeight(given));
  }

  @Route(contract.workOutBatch)
  batch(@Input() given: contract.InputOf<typeof contract.workOutBatch>) {
    return worked(batchByPercent({ lines: given.lines, from: batchFrom(given) }));
  }
}
