import { calculationList } from '../../src/conversation/catalogue.js';
import { hearText, understand } from '../../src/conversation/understand.js';
import { profileInputs } from '../../src/core/profile.js';
import { METRIC } from '../../src/core/show-value.js';
import { topicsOf } from '../../src/language/topic.js';
import { sentences } from './messages.js';
import { medianPace, type Pace, timeEach } from './rounds.js';

const NOW = new Date('2027-03-01T19:00:00-05:00');
const WARM_UP = 12;
const ROUNDS = 12;

/** Our reading: measurements, topic, and which number is which input of it. */
function read(sentence: string) {
  const heard = hearText(sentence);
  const [topic] = topicsOf(heard.words, heard.mentions, calculationList);
  const hints = { preferences: METRIC, settled: false, said: heard.said, now: NOW, zone: 'UTC' };
  return understand(heard, topic?.calculation.inputs ?? profileInputs, hints);
}

export async function measureUnderstanding(): Promise<Pace> {
  const rounds: number[][] = [];
  for (let round = 0; round < WARM_UP + ROUNDS; round += 1) rounds.push(await timeEach(sentences, read));
  return medianPace(rounds.slice(WARM_UP));
}
