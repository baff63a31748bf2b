import { existsSync } from 'node:fs';

const DEFAULT_DATABASE = './brinewright.db';

/** The database that the environment or `.env` names. Nothing else of the configuration is read, so that a script starts fast. */
export function databasePath(): string {
  if (process.env.DATABASE === undefined && existsSync('.env')) process.loadEnvFile('.env');
  return process.env.DATABASE || DEFAULT_DATABASE;
}
