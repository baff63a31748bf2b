import { type SetAside, setAside } from '../../data/set-aside.js';
import { type CueFound, indexPhrases, phrasesIn } from '../language/cues.js';
import type { Heard } from './understand.js';

/** How far apart words of a message may stand that belong together, in characters. */
const REACH = 40;

type Phrases = ReadonlySet<string>;
type Lists = readonly Phrases[];

interface Row extends Pick<SetAside, 'about' | 'kind' | 'says' | 'wordsOnly'> {
  readonly any: Phrases;
  readonly together: readonly Lists[];
  readonly inOrder: readonly Lists[];
  readonly unless: Phrases;
}

const phrasesOf = (list = ''): Phrases =>
  new Set(
    list
      .split(',')
      .map((phrase) => phrase.trim())
      .filter((phrase) => phrase !== ''),
  );

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
    rows
      .flatMap(({ any, together, inOrder, unless }) => [any, unless, ...together.flat(), ...inOrder.flat()])
      .flatMap((phrases) => [...phrases]),
  ),
);

/** What is not worked out: the first row of the table that a message fits. */
export function setAsideFor({ words, mentions }: Heard): Row | undefined {
  const found = [...phrasesIn(words, index)];
  const holds = (list: Phrases) => found.some(([phrase]) => list.has(phrase));
  const placesOf = (list: Phrases): readonly CueFound[] =>
    found.flatMap(([phrase, places]) => (list.has(phrase) ? places : []));
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
  const fits = (lists: Lists, ordered: boolean) => lists.every(holds) && close(lists, ordered);
  return rows.find(
    ({ wordsOnly, any, together, inOrder, unless }) =>
      !(wordsOnly && mentions.length > 0) &&
      (holds(any) || together.some((lists) => fits(lists, false)) || inOrder.some((lists) => fits(lists, true))) &&
      !holds(unless),
  );
}
