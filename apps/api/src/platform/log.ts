import type { LoggerService } from '@nestjs/common';
import pino, { type Logger } from 'pino';

/** Logs JSON lines on standard error; standard output is for people. */
export const openLog = (level: string): Logger => pino({ level }, pino.destination({ fd: 2, sync: true }));

/** A shop has no use for what Nest logs of its own start. */
export function nestLog(log: Logger): LoggerService {
  const say =
    (level: 'debug' | 'warn' | 'error' | 'fatal') =>
    (message: unknown, ...more: unknown[]) => {
      const about = typeof message === 'object' && message !== null ? message : {};
      log[level]({ ...about, from: more.at(-1) }, typeof message === 'string' ? message : undefined);
    };
  return { log: say('debug'), debug: say('debug'), verbose: say('debug'), warn: say('warn'), error: say('error'), fatal: say('fatal') };
}
