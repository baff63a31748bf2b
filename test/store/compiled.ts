import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll } from 'vitest';

const run = promisify(execFile);
const project = resolve(import.meta.dirname, '../..');

/** Compiles the store and its command once for a test file, for programs that must run in a process of their own. */
export function compiled(): { readonly folder: string; readonly module: (file: string) => string } {
  const folder = mkdtempSync(join(tmpdir(), 'brinewright-compiled-'));
  beforeAll(async () => {
    symlinkSync(join(project, 'node_modules'), join(folder, 'node_modules'));
    writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
    const options = {
      noEmit: false,
      // Types are checked by `npm run typecheck`; here only the programs are needed.
      noCheck: true,
      rootDir: project,
      outDir: folder,
      typeRoots: [join(project, 'node_modules/@types')],
    };
    const files = ['src/store/open.ts', 'src/backup.ts'].map((file) => join(project, file));
    const config = { extends: join(project, 'tsconfig.json'), compilerOptions: options, include: [], files };
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(config));
    await run(process.execPath, [join(project, 'node_modules/typescript/bin/tsc'), '-p', folder]);
  }, 60_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return { folder, module: (file) => join(folder, 'src', file) };
}
