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
import { SignedIn, type Person } from '../platform/person';
import { airOf } from './air-of';
import { publishedLimit } from './published-limit';
import { calculated } from './calculated';

/** Nothing is read from the book, nothing is written. */
@Controller('api/v1')
export class CalculatorsController {
  @Route(contract.calculateCure)
  cure(@Input() { limit, ...given }: contract.InputOf<typeof contract.calculateCure>, @SignedIn() by: Person) {
    return calculated(cureForMeat({ ...given, limit: publishedLimit(limit, by.voice, 'concentration').limit }));
  }

  @Route(contract.calculateHold)
  hold(@Input() { value, unit, limit: key }: contract.InputOf<typeof contract.calculateHold>, @SignedIn() by: Person) {
    const { title, limit } = publishedLimit(key, by.voice, 'dwell');
    return calculated(timeAtTemperature(value, unit, limit, title));
  }

  @Route(contract.calculateCurve)
  curve(
    @Input() { readings, unit, limit: key, shape, thinnest }: contract.InputOf<typeof contract.calculateCurve>,
    @SignedIn() by: Person,
  ) {
    const { title, limit } = publishedLimit(key, by.voice, 'dwell', 'cooling', 'bandTime');
    const piece = pieceOf(shape, thinnest);
    return calculated(curveAgainstLimit(readings, unit, limit, title, piece));
  }

  @Route(contract.calculateInstrument)
  instrument(@Input() given: contract.InputOf<typeof contract.calculateInstrument>) {
    return calculated(limitWithInstrument(given));
  }

  @Route(contract.calculateBoiling)
  boiling(@Input() { unit, ...at }: contract.InputOf<typeof contract.calculateBoiling>) {
    return calculated(thermometerInBoilingWater(airOf(at), unit));
  }

  @Route(contract.calculateLethality)
  lethality(@Input() { readings, unit, limit: key }: contract.InputOf<typeof contract.calculateLethality>, @SignedIn() by: Person) {
    const { title, limit } = publishedLimit(key, by.voice, 'dwell');
    return calculated(lethalityOfCook(readings, unit, limit, title));
  }

  @Route(contract.calculateGrowth)
  growth(@Input() { cured, ...given }: contract.InputOf<typeof contract.calculateGrowth>) {
    return calculated(growthWhileCooling({ ...given, cured: cured === 'yes' }));
  }

  @Route(contract.calculateArrival)
  arrival(@Input() given: contract.InputOf<typeof contract.calculateArrival>) {
    return calculated(arrivalAtTarget(given));
  }

  @Route(contract.calculateIngoing)
  ingoing(@Input() given: contract.InputOf<typeof contract.calculateIngoing>) {
    return calculated(ingoingByMethod(given));
  }

  @Route(contract.calculateComposition)
  composition(@Input() given: contract.InputOf<typeof contract.calculateComposition>) {
    return calculated(compositionByAnalysis(given));
  }

  @Route(contract.calculateListeria)
  listeria(@Input() { celsius, hours, ...product }: contract.InputOf<typeof contract.calculateListeria>) {
    return calculated(listeriaInThePack(product, { celsius, hours }));
  }

  @Route(contract.calculateFermentation)
  fermentation(@Input() { readings, unit }: contract.InputOf<typeof contract.calculateFermentation>) {
    return calculated(fermentationByDegreeHours(readings, unit));
  }

  @Route(contract.calculateDrying)
  drying(@Input() given: contract.InputOf<typeof contract.calculateDrying>) {
    return calculated(lossInDrying(given));
  }

  @Route(contract.calculateFreezing)
  freezing(@Input() given: contract.InputOf<typeof contract.calculateFreezing>) {
    const { what, thickness = 0, thicknessUnit, readings, unit } = given;
    const read = what === 'centre' ? { what } : { what, thickness: { value: thickness, unit: thicknessUnit } };
    return calculated(freezingOfPork(read, readings, unit));
  }

  @Route(contract.calculateHumidity)
  humidity(@Input() { option, ...cook }: contract.InputOf<typeof contract.calculateHumidity>) {
    return calculated(humidityWhileCooking({ option: Number(option) as HumidityOption, ...cook }));
  }

  @Route(contract.calculateEquivalentHold)
  equivalentHold(@Input() given: contract.InputOf<typeof contract.calculateEquivalentHold>) {
    return calculated(holdAtAnotherTemperature(given));
  }
}

type Shape = contract.InputOf<typeof contract.calculateCurve>['shape'];

function pieceOf(shape: Shape = 'cylinder', thinnest: number | undefined): Piece | undefined {
  if (shape === 'stirred') return { shape };
  return thinnest === undefined ? undefined : { shape, smallest: { value: thinnest, unit: 'mm' } };
}
