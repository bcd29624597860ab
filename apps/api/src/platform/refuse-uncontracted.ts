import type { INestApplicationContext } from '@nestjs/common';
import { PATH_METADATA } from '@nestjs/common/constants';
import { MetadataScanner, ModulesContainer } from '@nestjs/core';
import { contractOfHandler, isWithoutContract } from './contract-route';

/** Without a contract nothing checks who calls a handler, or with what. */
export function refuseUncontracted(app: INestApplicationContext): void {
  for (const { name, handlers } of controllersOf(app)) {
    for (const [method, handler] of handlers) {
      if (contractOfHandler(handler) || isWithoutContract(handler)) continue;
      throw new Error(`${name}.${method} has no contract: bind one with @Route, or say @WithoutContract.`);
    }
  }
}

function* controllersOf(app: INestApplicationContext) {
  const scanner = new MetadataScanner();
  for (const module of app.get(ModulesContainer).values()) {
    for (const { metatype } of module.controllers.values()) {
      const prototype = (metatype as { prototype: Record<string, object> }).prototype;
      const methods = scanner.getAllMethodNames(prototype).map((method) => [method, prototype[method] as object] as const);
      yield { name: metatype?.name, handlers: methods.filter(([, handler]) => Reflect.hasMetadata(PATH_METADATA, handler)) };
    }
  }
}
