import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clipped, lengthOf, packed } from '../../src/render/limits.js';

const lines = fc.array(fc.stringMatching(/^ {0,3}[a-z ]{0,60}$/), { maxLength: 30 }).map((list) => list.join('\n'));
const words = (texts: readonly string[]) => texts.join(' ').split(/\s+/).filter(Boolean).join('');

describe('packed', () => {
  test('loses no letter, and no text is longer than it may be', () => {
    fc.assert(
      fc.property(fc.array(lines, { maxLength: 8 }), fc.integer({ min: 5, max: 400 }), (blocks, most) => {
        const texts = packed(blocks, most);
        expect(words(texts)).toBe(words(blocks));
        for (const text of texts) expect(lengthOf(text)).toBeLessThanOrEqual(most);
      }),
    );
  });

  test('counts a character outside the basic plane once, and divides between such', () => {
    expect(packed(['🐠'.repeat(10)], 4)).toEqual(['🐠🐠🐠🐠', '🐠🐠🐠🐠', '🐠🐠']);
  });

  test('keeps a block whole where it fits, and an indented line with the one above it', () => {
    expect(packed(['one', 'two', 'three'], 8)).toEqual(['one\n\ntwo', 'three']);
    expect(packed(['1. first\n   a = 1\n2. second\n   b = 2'], 20)).toEqual([
      '1. first\n   a = 1',
      '2. second\n   b = 2',
    ]);
  });

  test('an empty block leaves no trace', () => {
    expect(packed(['', 'a', ' \n', 'b'], 50)).toEqual(['a\n\nb']);
  });
});

test('clipped ends at a word and says that something is missing', () => {
  expect(clipped('  short ', 10)).toBe('short');
  expect(clipped('a heater for a cold room', 15)).toBe('a heater for a…');
  fc.assert(
    fc.property(fc.string(), fc.integer({ min: 2, max: 40 }), (text, most) => {
      expect(lengthOf(clipped(text, most))).toBeLessThanOrEqual(most);
    }),
  );
});
