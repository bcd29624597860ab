import 'reflect-metadata';
import { join } from 'node:path';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import { AppModule } from './app.module';
import { nestLog, openLog } from './platform/log';
import type { Open } from './platform/platform.module';
import { refuseUncontracted } from './platform/refuse-uncontracted';
import { securityHeaders } from './platform/security-headers';
import { serveWebApp } from './platform/web-app';
import { projectRoot } from './project-root';

/** A day of logger readings, one each second, fits. */
const largestBody = 4 * 1024 * 1024;

/** Contracts validate requests and replies; Fastify's own schema compilers would only slow the start. */
const noSchemas = () => {
  throw new Error('A route has a schema beside its contract');
};
const compilersFactory = { buildValidator: noSchemas, buildSerializer: noSchemas };

/** The app does not listen yet and reads only JSON. */
export async function createApp(open: Open, logLevel: string): Promise<NestFastifyApplication> {
  const log = openLog(logLevel);
  const fastify = new FastifyAdapter({
    loggerInstance: log,
    bodyLimit: largestBody,
    trustProxy: 'loopback',
    schemaController: { compilersFactory },
  });
  const app = await NestFactory.create<NestFastifyApplication>(AppModule.on(open), fastify, {
    logger: nestLog(log),
    bodyParser: false,
    abortOnError: false,
  });
  refuseUncontracted(app);
  const server = fastify.getInstance();
  server.removeContentTypeParser('text/plain');
  securityHeaders(server);
  await serveWebApp(server, join(projectRoot, 'apps/web/dist'));
  return app;
}
