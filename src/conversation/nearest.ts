import type { Calculation } from '../core/calculation.js';
import { isLittle, type Words, wordsOf } from '../language/cues.js';
import type { TopicScore } from '../language/topic.js';
import { calculationList } from './catalogue.js';

/** For when a message speaks of nothing that a calculation speaks of. */
const USUAL: readonly string[] = ['volume.rectangular', 'heater.size', 'drain.siphon'];
const MOST = 3;

/** Words of titles that name no thing of a build, and the tank and its water, which all is about. */
const NO_THINGS = new Set(
  'how what which when where should get gets new time long last days day out all one other really after with you your fast low high slow tank water'.split(
    ' ',
  ),
);
const IN_TITLE = 3;
/** What a group's usual question is ahead of its special ones. */
const GENERAL = 0.1;

/** The things in a calculation's title, and those that its inputs are named by. */
interface Things {
  readonly calculation: Calculation;
  readonly title: ReadonlySet<string>;
  readonly names: ReadonlySet<string>;
}

let known: readonly Things[] | undefined;

/** Worked out once, when the first message was not understood. */
function things(): readonly Things[] {
  known ??= calculationList.map((calculation) => ({
    calculation,
    title: wordsOf(calculation.title.toLowerCase()).forms,
    names: wordsOf(
      Object.values(calculation.inputs)
        .map(({ name }) => name.toLowerCase())
        .join(' '),
    ).forms,
  }));
  return known;
}

/** Calculations about the things that a message speaks of, the nearest first; a thing that few are about says more. */
function aboutThings({ list }: Words): Calculation[] {
  const spokenOf = new Set(list.map(({ text }) => text).filter((word) => !isLittle(word) && !NO_THINGS.has(word)));
  const nearness = new Map<Calculation, number>();
  for (const word of spokenOf) {
    const users = things().filter(({ title, names }) => title.has(word) || names.has(word));
    const tells = Math.log(calculationList.length / users.length);
    for (const { calculation, title } of users) {
      const before = nearness.get(calculation) ?? (calculation.general ? GENERAL : 0);
      nearness.set(calculation, before + tells * (title.has(word) ? IN_TITLE : 1));
    }
  }
  return [...nearness].sort(([, a], [, b]) => b - a).map(([calculation]) => calculation);
}

/** What can be asked that is nearest to a message that was not understood. */
export function nearest(words: Words, topics: readonly TopicScore[]): Calculation[] {
  const usual = calculationList.filter(({ id }) => USUAL.includes(id));
  return [...new Set([...topics.map(({ calculation }) => calculation), ...aboutThings(words), ...usual])].slice(
    0,
    MOST,
  );
}

/** The shortest way to ask it. */
export const shortestExample = ({ examples }: Calculation): string =>
  examples.reduce((shortest, example) => (example.length < shortest.length ? example : shortest));
