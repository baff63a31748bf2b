import { createRequire } from 'node:module';

// Kysely is some 280 small files and every `ask` pays for loading them; as CommonJS that takes two thirds of the time.
export const { CompiledQuery, Kysely, SqliteDialect, sql } = createRequire(import.meta.url)(
  'kysely',
) as typeof import('kysely');
