import { model } from '../model.js';

/** A series that has not arrived after this many changes never does, as far as anybody cares. */
const MOST_CHANGES = 10_000;

export const waterChangeModels = [
  model({
    name: 'changes_to_reach',
    args: { c_1: 'kg/m^3', c_2: 'kg/m^3', c_n: 'kg/m^3', f: '1', p: 'kg/m^3' },
    unit: '1',
    meaning:
      'how many changes of a share f with water of c_n bring c_1 down to c_2, when p is added before each but the first: c = (1 − f)*c + f*c_n again and again; infinite when they never do',
    source: 'mass balance, change by change',
    apply: (c1 = 0, c2 = 0, cn = 0, f = 0, p = 0) => {
      let c = c1;
      for (let n = 1; n <= MOST_CHANGES; n += 1) {
        c = (1 - f) * c + f * cn;
        if (c <= c2 * (1 + 1e-12)) return n;
        c += p;
      }
      return Number.POSITIVE_INFINITY;
    },
  }),
];
