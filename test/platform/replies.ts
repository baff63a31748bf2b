import type { Reply } from '../../src/core/reply.js';

export const reply = (parts: Partial<Reply> = {}): Reply => ({
  member: 'someone',
  kind: 'notice',
  calculation: null,
  headline: 'Noted.',
  inputs: [],
  steps: [],
  results: [],
  cautions: [],
  sources: [],
  asks: [],
  files: [],
  text: parts.headline ?? 'Noted.',
  ...parts,
});

/** A worked answer with everything a face draws. */
export const answer = (parts: Partial<Reply> = {}): Reply =>
  reply({
    kind: 'answer',
    calculation: 'drain.siphon',
    headline: 'This drain carries 3,800 L/h.',
    inputs: [
      { id: 'drop', name: 'drop', value: 30, unit: 'in', si: 0.762, si_unit: 'm', from: 'message', shown: '30 in' },
    ],
    steps: [
      {
        symbol: 'A',
        name: 'bore area',
        formula: 'pi*D^2/4',
        values: { D: 0.0266 },
        si: 5.557e-4,
        si_unit: 'm^2',
        shown: 'A = pi·(0.0266 m)²/4 = 0.0005557 m²',
      },
    ],
    results: [
      {
        id: 'flow',
        name: 'flow at full siphon',
        value: 3800,
        unit: 'L/h',
        si: 1.06e-3,
        si_unit: 'm^3/s',
        shown: '3,800 L/h',
      },
    ],
    cautions: [{ level: 'caution', text: 'Test the drain before you trust it.' }],
    sources: ['Swamee and Jain 1976'],
    text: 'This drain carries 3,800 L/h, in plain text.',
    actions: [
      { verb: 'working', label: 'Show the working' },
      { verb: 'units', label: 'In US units' },
      { verb: 'save', label: 'Save to my tank' },
    ],
    answerId: 'answer-1',
    ...parts,
  });
