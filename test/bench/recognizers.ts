import {
  Culture,
  recognizeAge,
  recognizeCurrency,
  recognizeDateTime,
  recognizeDimension,
  recognizeNumber,
  recognizeTemperature,
} from '@microsoft/recognizers-text-suite';
import { sentences } from './messages.js';
import { medianPace, type Pace, timeEach } from './rounds.js';

/** Sentences until the regular expressions are compiled. */
const WARM_UP = 100;
const ROUNDS = 3;

/** A recognizer with its ordinary options. */
type Recognizer = (sentence: string, culture: string) => unknown;

const MEASURES: readonly Recognizer[] = [recognizeNumber, recognizeDimension, recognizeTemperature];
const REST: readonly Recognizer[] = [recognizeCurrency, recognizeAge, recognizeDateTime];

const timed = (texts: readonly string[], recognizers: readonly Recognizer[]) =>
  timeEach(texts, (sentence) => recognizers.map((recognize) => recognize(sentence, Culture.English)));

export interface RecognizersPace {
  /** Numbers, dimensions, temperatures, currency, ages, dates and times. */
  readonly all: Pace;
  /** Numbers, dimensions and temperatures alone. */
  readonly measures: Pace;
}

/** General-purpose recognizers over the same sentences. */
export async function measureRecognizers(): Promise<RecognizersPace> {
  await timed(sentences.slice(0, WARM_UP), [...MEASURES, ...REST]);
  const rounds = { all: [] as number[][], measures: [] as number[][] };
  for (let round = 0; round < ROUNDS; round += 1) {
    const measures = await timed(sentences, MEASURES);
    const rest = await timed(sentences, REST);
    rounds.measures.push(measures);
    rounds.all.push(measures.map((time, i) => time + rest[i]!));
  }
  return { all: medianPace(rounds.all), measures: medianPace(rounds.measures) };
}
