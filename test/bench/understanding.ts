import {
  Culture,
  recognizeAge,
  recognizeCurrency,
  recognizeDateTime,
  recognizeDimension,
  recognizeNumber,
  recognizeTemperature,
} from '@microsoft/recognizers-text-suite';
import { calculationList } from '../../src/conversation/catalogue.js';
import { hearText, understand } from '../../src/conversation/understand.js';
import { profileInputs } from '../../src/core/profile.js';
import { METRIC } from '../../src/core/show-value.js';
import { topicsOf } from '../../src/language/topic.js';
import { sentences } from './messages.js';
import { medianPace, type Pace, timeEach } from './rounds.js';

/** Ours is compiled as it runs hot; theirs is regular expressions, which one round compiles. */
const WARM_UP = { ours: 12, theirs: 1 };
const ROUNDS = 3;

/** Our reading: measurements, topic, and which number is which input of it. */
function ours(sentence: string) {
  const heard = hearText(sentence);
  const [topic] = topicsOf(heard.words, heard.mentions, calculationList);
  const hints = { preferences: METRIC, settled: false, said: heard.said };
  return understand(heard, topic?.calculation.inputs ?? profileInputs, hints);
}

/** A recognizer with its ordinary options. */
type Recognizer = (sentence: string, culture: string) => unknown;

const MEASURES: readonly Recognizer[] = [recognizeNumber, recognizeDimension, recognizeTemperature];
const REST: readonly Recognizer[] = [recognizeCurrency, recognizeAge, recognizeDateTime];

const recognized = (sentence: string, recognizers: readonly Recognizer[]) =>
  recognizers.map((recognize) => recognize(sentence, Culture.English));

export interface Understanding {
  readonly sentences: number;
  readonly ours: Pace;
  /** Numbers, dimensions, temperatures, currency, ages, dates and times. */
  readonly recognizers: Pace;
  /** Numbers, dimensions and temperatures alone. */
  readonly measuresAlone: Pace;
}

/** The same sentences read by us and by general-purpose recognizers, turn by turn. */
export async function measureUnderstanding(): Promise<Understanding> {
  for (let round = 0; round < WARM_UP.ours; round += 1) await timeEach(sentences, ours);
  for (let round = 0; round < WARM_UP.theirs; round += 1)
    await timeEach(sentences, (sentence) => recognized(sentence, [...MEASURES, ...REST]));
  const rounds = { ours: [] as number[][], measures: [] as number[][], all: [] as number[][] };
  for (let round = 0; round < ROUNDS; round += 1) {
    rounds.ours.push(await timeEach(sentences, ours));
    const measures = await timeEach(sentences, (sentence) => recognized(sentence, MEASURES));
    const rest = await timeEach(sentences, (sentence) => recognized(sentence, REST));
    rounds.measures.push(measures);
    rounds.all.push(measures.map((time, i) => time + rest[i]!));
  }
  return {
    sentences: sentences.length,
    ours: medianPace(rounds.ours),
    recognizers: medianPace(rounds.all),
    measuresAlone: medianPace(rounds.measures),
  };
}
