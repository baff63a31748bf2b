import { readdirSync, writeFileSync } from 'node:fs';

/** Writes the list of a folder's modules; `heater-size.ts` exports `heaterSize` and the suffix. */
function writeIndex(folder: string, list: string, suffix: string): void {
  const files = readdirSync(folder)
    .filter((file) => file.endsWith('.ts') && file !== 'index.ts')
    .map((file) => file.slice(0, -3))
    .sort();
  const camel = (file: string) => file.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
  const names = files.map((file) => camel(file) + suffix);
  const imports = files.map((file, i) => `import { ${names[i]} } from './${file}.js';`);
  const lines = [
    '// Written by `npm run gen`.',
    ...imports,
    '',
    `export const ${list} = [`,
    ...names.map((name) => `  ${name},`),
    '] as const;',
    '',
  ];
  writeFileSync(`${folder}/index.ts`, lines.join('\n'));
}

/** Writes the files that follow from others: the list of calculations, and the list of commands. */
export function writeIndexes(): void {
  writeIndex('src/core/calculations', 'calculations', '');
  writeIndex('commands', 'commands', 'Command');
}
