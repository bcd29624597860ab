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
import { SignedIn, type Person } from '../platform/person';
import { batchFrom } from './batch-from';
import { publishedLimit } from './published-limit';
import { calculated } from './calculated';

/** Nothing is read from the book, nothing is written. */
@Controller('api/v1')
export class FormulaCalculatorsController {
  @Route(contract.calculatePickle)
  pickle(@Input() given: contract.InputOf<typeof contract.calculatePickle>) {
    return calculated(cureForPickle(given));
  }

  @Route(contract.calculateBrine)
  brine(@Input() given: contract.InputOf<typeof contract.calculateBrine>) {
    return calculated(strengthOfBrine(given));
  }

  @Route(contract.calculatePump)
  pump(@Input() given: contract.InputOf<typeof contract.calculatePump>) {
    return calculated(pumpByWeight(given));
  }

  @Route(contract.calculatePhosphate)
  phosphate(@Input() given: contract.InputOf<typeof contract.calculatePhosphate>) {
    return calculated(phosphateInPumpedMeat(given));
  }

  @Route(contract.calculateBinders)
  binders(@Input() given: contract.InputOf<typeof contract.calculateBinders>) {
    return calculated(bindersInProduct(given));
  }

  @Route(contract.calculateCitric)
  citric(@Input() given: contract.InputOf<typeof contract.calculateCitric>) {
    return calculated(citricForAccelerator(given));
  }

  @Route(contract.calculateNaturalNitrite)
  naturalNitrite(@Input() given: contract.InputOf<typeof contract.calculateNaturalNitrite>, @SignedIn() by: Person) {
    const { certificateLot, percent, plusMinus, as, limit: key, ...weighed } = given;
    const { limit } = publishedLimit(key, by.voice, 'concentration');
    const certificate = { ingredientLot: certificateLot, percent, plusMinus, as };
    return calculated(nitriteFromNaturalSource({ ...weighed, certificate, limit }));
  }

  @Route(contract.calculateWaterInFormula)
  waterInFormula(@Input() given: contract.InputOf<typeof contract.calculateWaterInFormula>) {
    return calculated(waterInFormula(given));
  }

  @Route(contract.calculateWaterInProduct)
  waterInProduct(@Input() given: contract.InputOf<typeof contract.calculateWaterInProduct>) {
    return calculated(waterInFinishedProduct(given));
  }

  @Route(contract.calculatePercent)
  percent(@Input() given: contract.InputOf<typeof contract.calculatePercent>) {
    return calculated(percentAndWeight(given));
  }

  @Route(contract.calculateBatch)
  batch(@Input() given: contract.InputOf<typeof contract.calculateBatch>) {
    return calculated(batchByPercent({ lines: given.lines, from: batchFrom(given) }));
  }
}
