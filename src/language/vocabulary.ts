import type { Calculation } from '../core/calculation.js';
import { isLittle, type Words, wordsOf } from './cues.js';

/** What a word is worth by where a calculation uses it. */
const SAID = { cue: 1, question: 0.8, input: 0.5, example: 0.35 } as const;
const SHORTEST = 3;
/** A message whose words tell less than this altogether says too little to be known by them. */
const TELLS_LITTLE = 14;

/** One form of a word and its plural. */
const stem = (word: string): string =>
  word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;

const tellingWords = (text: string): string[] =>
  wordsOf(text.toLowerCase())
    .list.map(({ text: word }) => word)
    .filter((word) => word.length >= SHORTEST && /^[a-z]/.test(word) && !isLittle(word))
    .map(stem);

interface Vocabulary {
  /** Word by word, how much each calculation uses it, 0 to 1. */
  readonly uses: ReadonlyMap<string, ReadonlyMap<Calculation, number>>;
  /** How telling each word is: one that few calculations use tells more. */
  readonly tells: ReadonlyMap<string, number>;
}

const made = new WeakMap<readonly Calculation[], Vocabulary>();

function vocabularyOf(calculations: readonly Calculation[]): Vocabulary {
  const known = made.get(calculations);
  if (known) return known;
  const uses = new Map<string, Map<Calculation, number>>();
  const use = (calculation: Calculation, texts: readonly string[], worth: number) => {
    for (const word of texts.flatMap(tellingWords)) {
      const users = uses.get(word) ?? new Map<Calculation, number>();
      users.set(calculation, Math.max(users.get(calculation) ?? 0, worth));
      uses.set(word, users);
    }
  };
  for (const calculation of calculations) {
    use(calculation, [calculation.title, ...calculation.cues], SAID.cue);
    use(calculation, [calculation.question], SAID.question);
    use(
      calculation,
      Object.values(calculation.inputs).flatMap(({ name, words = [] }) => [name, ...words]),
      SAID.input,
    );
    use(calculation, calculation.examples, SAID.example);
  }
  const tells = new Map([...uses].map(([word, users]) => [word, Math.log(1 + calculations.length / users.size)]));
  const vocabulary = { uses, tells };
  made.set(calculations, vocabulary);
  return vocabulary;
}

/**
 * How much of what a message says each calculation speaks of, 0 to 1: the share of its telling words that the calculation
 * uses, rarer words weighing more (inverse document frequency: Spärck Jones 1972).
 */
export function likeness(words: Words, calculations: readonly Calculation[]): ReadonlyMap<Calculation, number> {
  const { uses, tells } = vocabularyOf(calculations);
  const said = new Set(words.list.map(({ text }) => stem(text)).filter((word) => tells.has(word)));
  const all = Math.max(
    TELLS_LITTLE,
    [...said].reduce((sum, word) => sum + tells.get(word)!, 0),
  );
  const shares = new Map<Calculation, number>();
  for (const word of said)
    for (const [calculation, worth] of uses.get(word)!)
      shares.set(calculation, (shares.get(calculation) ?? 0) + (worth * tells.get(word)!) / all);
  return shares;
}
