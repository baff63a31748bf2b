import { expect, test } from 'vitest';
import { messages } from './corpus.js';
import { labelProblems } from './labels.js';

test('what a label says of a message is what the same numbers lead to without language', async () => {
  expect(await labelProblems(messages())).toEqual([]);
});
