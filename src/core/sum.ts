/** The most numbered symbols (`A_1`, `A_2` …) that one sum or list may run over: a reading a day for a month. */
export const MOST_TERMS = 31;

const NUMBERED = /([A-Za-z_]+)_i\b/g;
const TEMPLATE = /(sum|list)_i\(((?:[^()]|\([^()]*\))*)\)/;

export const isTemplate = (formula: string): boolean => TEMPLATE.test(formula);

/**
 * Writes a formula's `sum_i(A_i*h_i)` out over the numbers for which every symbol in it has a value, `A_1*h_1 + A_2*h_2`,
 * and `last(list_i(t_i, a_i))` as the arguments of a function over rows, `last(t_1, a_1, t_2, a_2)`.
 * @returns undefined when no term has all its values.
 */
export function writeOut(formula: string, known: (symbol: string) => boolean): string | undefined {
  let text = formula;
  for (let match = text.match(TEMPLATE); match; match = text.match(TEMPLATE)) {
    const [, kind, term = ''] = match;
    const terms: string[] = [];
    const names = [...term.matchAll(NUMBERED)].map(([, name]) => name!);
    for (let i = 1; i <= MOST_TERMS; i += 1) {
      if (names.every((name) => known(`${name}_${i}`))) terms.push(term.replace(NUMBERED, `$1_${i}`));
    }
    if (terms.length === 0) return undefined;
    const joined = terms.join(kind === 'sum' ? ' + ' : ', ');
    const whole = kind === 'list' || match[0] === text.trim();
    text = text.replace(match[0], whole || terms.length === 1 ? joined : `(${joined})`);
  }
  return text;
}

/** The numbered names that a `_i` name stands for. */
export const numbered = (name: string): string[] =>
  name.endsWith('_i') ? Array.from({ length: MOST_TERMS }, (_, i) => `${name.slice(0, -1)}${i + 1}`) : [name];
