import { type SetAside, setAside } from '../../data/set-aside.js';
import { type CueFound, indexPhrases, phrasesIn } from '../language/cues.js';
import type { Heard } from './understand.js';

/** How far apart words of a message may stand that belong together, in characters. */
const REACH = 40;

type Lists = readonly (readonly string[])[];

interface Row extends Pick<SetAside, 'about' | 'kind' | 'says'> {
  readonly any: readonly string[];
  readonly together: readonly Lists[];
  readonly inOrder: readonly Lists[];
  readonly unless: readonly string[];
}

const phrasesOf = (list = ''): string[] =>
  list
    .split(',')
    .map((phrase) => phrase.trim())
    .filter((phrase) => phrase !== '');

const listsOf = (entries: SetAside['together'] = []): Lists[] => entries.map((lists) => lists.map(phrasesOf));

const rows: readonly Row[] = setAside.map((row) => ({
  ...row,
  any: phrasesOf(row.any),
  together: listsOf(row.together),
  inOrder: listsOf(row.inOrder),
  unless: phrasesOf(row.unless),
}));

const index = indexPhrases(
  new Set(
    rows.flatMap(({ any, together, inOrder, unless }) => [any, unless, ...together.flat(), ...inOrder.flat()].flat()),
  ),
);

/** What is not worked out: the first row of the table that a message fits. */
export function setAsideFor({ words, mentions }: Heard): Row | undefined {
  const found = phrasesIn(words, index);
  const holds = (phrase: string) => found.has(phrase);
  const placesOf = (list: readonly string[]): readonly CueFound[] => list.flatMap((phrase) => found.get(phrase) ?? []);
  /** One of each list, each close behind the one before. */
  const close = (lists: Lists, ordered: boolean, after?: number): boolean =>
    lists.length === 0 ||
    lists.some(
      (list, i) =>
        (i === 0 || !ordered) &&
        placesOf(list).some(
          ({ start, end }) =>
            (after === undefined || (start >= after && start - after <= REACH)) &&
            close(lists.toSpliced(i, 1), ordered, end),
        ),
    );
  return rows.find(
    ({ kind, any, together, inOrder, unless }) =>
      // Short advice is no answer to a question with numbers.
      (kind !== 'advice' || mentions.length === 0) &&
      (any.some(holds) ||
        together.some((lists) => close(lists, false)) ||
        inOrder.some((lists) => close(lists, true))) &&
      !unless.some(holds),
  );
}
