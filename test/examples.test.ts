import { afterAll, describe, expect, test } from 'vitest';
import { calculationList } from '../src/conversation/catalogue.js';
import { startTalk } from './conversation.js';

const talk = await startTalk();
afterAll(() => talk.close());

describe('a member can ask each calculation in the words of its own examples', () => {
  for (const { id, examples } of calculationList) {
    for (const [i, example] of examples.entries()) {
      test(`${id}: ${example}`, async () => {
        const reply = await talk.says(example, { id: `${id}-${i}` });
        expect(reply.calculation, reply.text).toBe(id);
        expect(reply.kind, reply.text).toBe('answer');
      });
    }
  }
});

describe('what every declaration must carry', () => {
  for (const calculation of calculationList) {
    test(calculation.id, () => {
      expect(calculation.examples.length).toBeGreaterThan(0);
      expect(calculation.cautions.length).toBeGreaterThan(0);
      expect(calculation.sources.length).toBeGreaterThan(0);
      expect(calculation.cues.length).toBeGreaterThan(0);
      expect(calculation.slash).toMatch(/^[a-z]+ [a-z0-9-]+$/);
    });
  }

  test('no two calculations share a slash path', () => {
    const paths = calculationList.map(({ slash }) => slash);
    expect(new Set(paths).size).toBe(paths.length);
  });
});
