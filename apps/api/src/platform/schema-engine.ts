import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { PrismaPg } from '@prisma/adapter-pg';
import { bindMigrationAwareSqlAdapterFactory, DriverAdapterError } from '@prisma/driver-adapter-utils';
import type { SchemaEngine } from '@prisma/schema-engine-wasm/schema_engine_bg';
import pg from 'pg';

/** Node's types leave WebAssembly to those of the browser. */
declare const WebAssembly: {
  instantiate(program: Uint8Array, imports: object): Promise<{ instance: { exports: Record<string, unknown> } }>;
};

type Glue = typeof import('@prisma/schema-engine-wasm/schema_engine_bg');

/** Applies migrations as Prisma's command line does, without downloading a native program. */
export async function schemaEngine(pool: pg.Pool, schema: { path: string; text: string }): Promise<SchemaEngine> {
  engineCode ??= load();
  const { SchemaEngine } = await engineCode;
  return SchemaEngine.new(
    { datamodels: [[schema.path, schema.text]] },
    () => {},
    bindMigrationAwareSqlAdapterFactory(new WholeScripts(pool)),
  );
}

/** The glue knows one instance per process. Node 20 cannot import a .wasm file. */
let engineCode: Promise<Glue> | undefined;

async function load(): Promise<Glue> {
  const script = createRequire(import.meta.url).resolve('@prisma/schema-engine-wasm/schema_engine_bg');
  const glue = (await import('@prisma/schema-engine-wasm/schema_engine_bg')) as Glue;
  const { instance } = await WebAssembly.instantiate(await readFile(script.replace(/\.js$/, '.wasm')), { './schema_engine_bg.js': glue });
  glue.__wbg_set_wasm(instance.exports);
  (instance.exports.__wbindgen_start as () => void)();
  return glue;
}

/**
 * The adapter cuts a script at every semicolon, also in function bodies. Sent whole, a migration applies entirely or
 * not at all.
 */
class WholeScripts extends PrismaPg {
  override async connect() {
    const adapter = await super.connect();
    adapter.executeScript = async (script) => {
      await adapter.underlyingDriver().query(script).catch(inItsOwnWords);
    };
    return adapter;
  }
}

/** The engine repeats PostgreSQL's message only in this form. */
function inItsOwnWords(failure: unknown): never {
  if (!(failure instanceof pg.DatabaseError)) throw failure;
  const { code = 'XX000', severity = 'ERROR', message, detail, column, hint } = failure;
  throw new DriverAdapterError({ kind: 'postgres', code, severity, message, detail, column, hint });
}
