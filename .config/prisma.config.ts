// Prisma's command line asks for a native engine that it would download; generating and checking never call it, so any
// executable will do. Migrations run through the same engine as WebAssembly (apps/api/src/platform/migrate.ts).
process.env.PRISMA_SCHEMA_ENGINE_BINARY ??= process.execPath;

import { defineConfig } from 'prisma/config';

export default defineConfig({
  schema: '../prisma/schema.prisma',
  migrations: { path: '../prisma/migrations' },
});
