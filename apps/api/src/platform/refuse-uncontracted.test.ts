import 'reflect-metadata';
import { Controller, Get, Module } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { expect, test } from 'vitest';
import { WithoutContract } from './contract-route';
import { refuseUncontracted } from './refuse-uncontracted';

@Controller()
class Watched {
  @WithoutContract()
  @Get('health')
  health() {
    return {};
  }
}

@Controller()
class Forgotten {
  @Get('secrets')
  list() {
    return {};
  }
}

@Module({ controllers: [Watched] })
class Sound {}

@Module({ imports: [Sound], controllers: [Forgotten] })
class Holed {}

const open = (module: new () => object) => NestFactory.createApplicationContext(module, { logger: false });

test('a handler without a contract is named, one that says so passes', async () => {
  const [sound, holed] = [await open(Sound), await open(Holed)];

  expect(() => refuseUncontracted(sound)).not.toThrow();
  expect(() => refuseUncontracted(holed)).toThrow('Forgotten.list has no contract');
});
