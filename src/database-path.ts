import { existsSync } from 'node:fs';

export const DEFAULT_DATABASE = './brinewright.db';

/** Puts the variables of a `.env` file into the environment; those that are set already stay. */
export function loadEnvFile(path = '.env'): void {
  if (existsSync(path)) process.loadEnvFile(path);
}

/** The database that the environment or `.env` names. Nothing else of the configuration is read, so that a script starts fast. */
export function databasePath(): string {
  if (process.env.DATABASE === undefined) loadEnvFile();
  return process.env.DATABASE || DEFAULT_DATABASE;
}
