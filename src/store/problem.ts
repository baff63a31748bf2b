import { StoreProblem } from '../conversation/ports.js';

const sentences = {
  corrupt: (database: string) =>
    `The ${database} is damaged or is not a database; it was left as it is, and a backup put in its place would be read.`,
  full: (database: string) =>
    `The disk under the ${database} is full, so this was not saved; all that was saved before is kept, and saving works again once there is room.`,
  locked: (database: string) =>
    `Another process kept the ${database} busy, so this was not done; nothing was changed, and a second try in a moment should work.`,
  'read-only': (database: string) =>
    `The ${database} cannot be written, so nothing in it was changed; its file and folder must be writable for the account that runs this.`,
} as const;

/** Beginnings of result codes of SQLite and the file system; the first that fits decides. */
const causes: readonly (readonly [result: string, keyof typeof sentences])[] = [
  ['SQLITE_CORRUPT', 'corrupt'],
  ['SQLITE_NOTADB', 'corrupt'],
  ['SQLITE_IOERR_READ', 'corrupt'],
  ['SQLITE_FULL', 'full'],
  ['SQLITE_BUSY', 'locked'],
  ['SQLITE_READONLY', 'read-only'],
  ['SQLITE_CANTOPEN', 'read-only'],
  ['SQLITE_IOERR', 'read-only'],
  ['EACCES', 'read-only'],
  ['EROFS', 'read-only'],
  ['ENOSPC', 'full'],
];

/** @returns the error in a sentence if the state of the database is its cause; a mistake of ours is not. */
export function problemOf(error: unknown, database: string): StoreProblem | undefined {
  if (!(error instanceof Error) || !('code' in error)) return undefined;
  const result = String(error.code);
  const code = causes.find(([start]) => result.startsWith(start))?.[1];
  return code && new StoreProblem(code, sentences[code](database), { cause: error });
}

export function nameTaken(name: string): StoreProblem {
  return new StoreProblem(
    'name-taken',
    `You already have a tank called "${name}"; nothing was changed, and any other name will do.`,
  );
}

export function newer(database: string, found: number, known: number): StoreProblem {
  return new StoreProblem(
    'newer',
    `The ${database} was written by a newer version of this program (schema ${found}, this one knows ${known}); it was left as it is, and the newer version can open it.`,
  );
}

export function foreign(database: string): StoreProblem {
  return new StoreProblem(
    'corrupt',
    `The ${database} is the database of another program; it was left as it is, and DATABASE should name a file of its own.`,
  );
}

export function noFile(database: string): StoreProblem {
  return new StoreProblem(
    'no-folder',
    `The ${database} is a folder; nothing in it was changed, and DATABASE should name a file in it.`,
  );
}

export function noFolder(folder: string, cause: unknown): StoreProblem {
  return new StoreProblem(
    'no-folder',
    `The folder ${folder} does not exist and could not be made; nothing was changed, and DATABASE should name a file in a folder that can be written.`,
    { cause },
  );
}

type Methods = Readonly<Record<string, (...args: never[]) => Promise<unknown>>>;

/** The same methods; where the state of the database makes one fail, it fails with a sentence. */
export function explained<T extends Methods>(methods: T, database: string): T {
  const explain =
    (method: (...args: never[]) => Promise<unknown>) =>
    async (...args: never[]) => {
      try {
        return await method(...args);
      } catch (error) {
        throw problemOf(error, database) ?? error;
      }
    };
  return Object.fromEntries(Object.entries(methods).map(([name, method]) => [name, explain(method)])) as T;
}
