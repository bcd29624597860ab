import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { PrismaPg } from '@prisma/adapter-pg';
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils';
import type { SchemaEngine } from '@prisma/schema-engine-wasm/schema_engine_bg';
import type pg from 'pg';

/** What is used of it; Node's types leave WebAssembly to those of the browser. */
declare const WebAssembly: {
  instantiate(program: Uint8Array, imports: object): Promise<{ instance: { exports: Record<string, unknown> } }>;
};

type Glue = typeof import('@prisma/schema-engine-wasm/schema_engine_bg');

/**
 * Prisma's own schema engine as WebAssembly: it applies migrations as its command line does, without the native program
 * that one would download. Loaded by hand, since Node 20 cannot import a .wasm file.
 */
export async function schemaEngine(pool: pg.Pool, schema: { path: string; text: string }): Promise<SchemaEngine> {
  const script = createRequire(import.meta.url).resolve('@prisma/schema-engine-wasm/schema_engine_bg');
  const glue = (await import('@prisma/schema-engine-wasm/schema_engine_bg')) as Glue;
  const { instance } = await WebAssembly.instantiate(await readFile(script.replace(/\.js$/, '.wasm')), { './schema_engine_bg.js': glue });
  glue.__wbg_set_wasm(instance.exports);
  (instance.exports.__wbindgen_start as () => void)();

  const adapter = bindMigrationAwareSqlAdapterFactory(new WholeScripts(pool));
  return glue.SchemaEngine.new({ datamodels: [[schema.path, schema.text]] }, () => {}, adapter);
}

/**
 * The adapter cuts a script at every semicolon, those inside function bodies too. Sent whole, PostgreSQL runs it as one
 * transaction: a migration is applied entirely or not at all.
 */
class WholeScripts extends PrismaPg {
  override async connect() {
    const adapter = await super.connect();
    adapter.executeScript = async (script) => void (await adapter.underlyingDriver().query(script));
    return adapter;
  }
}
