import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import {
  arrivalAtTarget,
  compositionByAnalysis,
  cureForMeat,
  curveAgainstLimit,
  fermentationByDegreeHours,
  freezingOfPork,
  growthWhileCooling,
  holdAtAnotherTemperature,
  humidityWhileCooking,
  ingoingByMethod,
  lethalityOfCook,
  limitWithInstrument,
  listeriaInThePack,
  lossInDrying,
  thermometerInBoilingWater,
  timeAtTemperature,
  type HumidityOption,
  type Piece,
} from '@larderbook/haccp';
import { Input, Route } from '../platform/contract-route';
import { airOf } from './air-of';
import { publishedLimit } from './published-limit';
import { worked } from './worked';

/** Every calculation without a lot. Nothing is read from the book and nothing is written. */
@Controller('api/v1')
export class CalculatorsController {
  @Route(contract.workOutCure)
  cure(@Input() { limit, ...given }: contract.InputOf<typeof contract.workOutCure>) {
    return worked(cureForMeat({ ...given, limit: publishedLimit(limit, 'concentration').limit }));
  }

  @Route(contract.workOutHold)
  hold(@Input() { value, unit, limit: key }: contract.InputOf<typeof contract.workOutHold>) {
    const { title, limit } = publishedLimit(key, 'dwell');
    return worked(timeAtTemperature(value, unit, limit, title));
  }

  @Route(contract.workOutCurve)
  curve(@Input() { readings, unit, limit: key, shape, thinnest }: contract.InputOf<typeof contract.workOutCurve>) {
    const { title, limit } = publishedLimit(key, 'dwell', 'cooling', 'bandTime');
    const piece = pieceOf(shape, thinnest);
    return worked(curveAgainstLimit(readings, unit, limit, title, piece));
  }

  @Route(contract.workOutInstrument)
  instrument(@Input() given: contract.InputOf<typeof contract.workOutInstrument>) {
    return worked(limitWithInstrument(given));
  }

  @Route(contract.workOutBoiling)
  boiling(@Input() { unit, ...at }: contract.InputOf<typeof contract.workOutBoiling>) {
    return worked(thermometerInBoilingWater(airOf(at), unit));
  }

  @Route(contract.workOutLethality)
  lethality(@Input() { readings, unit, limit: key }: contract.InputOf<typeof contract.workOutLethality>) {
    const { title, limit } = publishedLimit(key, 'dwell');
    return worked(lethalityOfCook(readings, unit, limit, title));
  }

  @Route(contract.workOutGrowth)
  growth(@Input() { cured, ...given }: contract.InputOf<typeof contract.workOutGrowth>) {
    return worked(growthWhileCooling({ ...given, cured: cured === 'yes' }));
  }

  @Route(contract.workOutArrival)
  arrival(@Input() given: contract.InputOf<typeof contract.workOutArrival>) {
    return worked(arrivalAtTarget(given));
  }

  @Route(contract.workOutIngoing)
  ingoing(@Input() given: contract.InputOf<typeof contract.workOutIngoing>) {
    return worked(ingoingByMethod(given));
  }

  @Route(contract.workOutComposition)
  composition(@Input() given: contract.InputOf<typeof contract.workOutComposition>) {
    return worked(compositionByAnalysis(given));
  }

  @Route(contract.workOutListeria)
  listeria(@Input() { celsius, hours, ...product }: contract.InputOf<typeof contract.workOutListeria>) {
    return worked(listeriaInThePack(product, { celsius, hours }));
  }

  @Route(contract.workOutFermentation)
  fermentation(@Input() { readings, unit }: contract.InputOf<typeof contract.workOutFermentation>) {
    return worked(fermentationByDegreeHours(readings, unit));
  }

  @Route(contract.workOutDrying)
  drying(@Input() given: contract.InputOf<typeof contract.workOutDrying>) {
    return worked(lossInDrying(given));
  }

  @Route(contract.workOutFreezing)
  freezing(@Input() given: contract.InputOf<typeof contract.workOutFreezing>) {
    const { what, thickness = 0, thicknessUnit, readings, unit } = given;
    const read = what === 'centre' ? { what } : { what, thickness: { value: thickness, unit: thicknessUnit } };
    return worked(freezingOfPork(read, readings, unit));
  }

  @Route(contract.workOutHumidity)
  humidity(@Input() { option, ...cook }: contract.InputOf<typeof contract.workOutHumidity>) {
    return worked(humidityWhileCooking({ option: Number(option) as HumidityOption, ...cook }));
  }

  @Route(contract.workOutEquivalentHold)
  equivalentHold(@Input() given: contract.InputOf<typeof contract.workOutEquivalentHold>) {
    return worked(holdAtAnotherTemperature(given));
  }
}

type Shape = contract.InputOf<typeof contract.workOutCurve>['shape'];

function pieceOf(shape: Shape = 'cylinder', thinnest: number | undefined): Piece | undefined {
  if (shape === 'stirred') return { shape };
  return thinnest === undefined ? undefined : { shape, smallest: { value: thinnest, unit: 'mm' } };
}
