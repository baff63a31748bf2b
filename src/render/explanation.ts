import type { ReadExplanation } from '../core/reply.js';
import { capital } from './text.js';

export const HOW_I_READ = 'How I read that';

/** An explanation as a person reads it, a line for each thing that was decided. */
export const explanationLines = ({ why }: ReadExplanation): string =>
  why.length === 0 ? 'There was nothing to decide.' : why.map((line) => `- ${startsWithWord(line)}.`).join('\n');

const startsWithWord = (line: string): string => (/^[a-z]/.test(line) ? capital(line) : line);
