import { commandList } from '../../src/compose.js';
import { createBrinewright } from '../../src/conversation/brinewright.js';
import { calculationNamed } from '../../src/conversation/catalogue.js';
import { profileFields } from '../../src/core/profile.js';
import { isUnit, unitNamed } from '../../src/core/quantity/units.js';
import { openStore } from '../../src/store/open.js';
import { asCalled, type Expected } from './corpus.js';

const CLOCK = { now: () => new Date('2027-03-01T12:00:00Z') };

/**
 * What is wrong with the labels of messages, found without reading the messages: an input that its topic does not have, a
 * unit of another quantity, and a question due that the same inputs, given without language, do not lead to (or lead to
 * another).
 */
export async function labelProblems(list: readonly Expected[]): Promise<{ say: string; problem: string }[]> {
  const store = await openStore(':memory:');
  const brinewright = createBrinewright({ store, commands: commandList, keepFile: async (name) => name });
  const found: { say: string; problem: string }[] = [];
  for (const [i, { say, topic, inputs = {}, asks }] of list.entries()) {
    if (topic === undefined || topic === 'none') continue;
    const calculation = calculationNamed(topic);
    if (topic === 'tank') {
      for (const [key, value] of Object.entries(inputs)) {
        const input = profileFields.get(key)?.input;
        const unit = typeof value === 'string' ? undefined : value[1];
        if (!input) found.push({ say, problem: `a tank keeps no ${key}` });
        else if (
          unit !== undefined &&
          input.kind === 'quantity' &&
          !(isUnit(unit) && unitNamed(unit).quantities.includes(input.quantity))
        )
          found.push({ say, problem: `${unit} is no unit of ${key}` });
      }
      continue;
    }
    if (!calculation) {
      found.push({ say, problem: `no topic ${topic}` });
      continue;
    }
    const [reply] = await brinewright.reply(
      { id: `member-${i}` },
      { calculation: topic, inputs: asCalled(inputs) },
      CLOCK,
    );
    const question = reply!.kind === 'question' ? (reply!.asks[0] ?? '') : undefined;
    if (question !== asks)
      found.push({
        say,
        problem: `${topic} asks ${question ?? 'nothing'} (${reply!.kind}: ${reply!.headline.slice(0, 90)}), the label says ${asks ?? 'nothing'}`,
      });
  }
  await store.close();
  return found;
}
