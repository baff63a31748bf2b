import { all, create, type EvalFunction } from 'mathjs';
import { expect } from 'vitest';
import { functions } from '../src/core/functions.js';
import type { Reply } from '../src/core/reply.js';

const math = create(all!, { predictable: true });
math.import(
  {
    ...Object.fromEntries(
      [...functions.values()].filter(({ source }) => source !== undefined).map(({ name, apply }) => [name, apply]),
    ),
    ln: Math.log,
    mod: (a: number, b: number) => ((a % b) + b) % b,
  },
  { override: true },
);

const compiled = new Map<string, EvalFunction>();

/** Works a formula with another program's parser and arithmetic; only the named functions are the project's own. */
export function evaluate(formula: string, values: Readonly<Record<string, number>>): number {
  let work = compiled.get(formula);
  if (!work) {
    work = math.compile(formula);
    compiled.set(formula, work);
  }
  return Number(work.evaluate({ ...values }));
}

/** Every step of a reply must come out of its printed formula and values again. */
export function recheckSteps(reply: Reply): void {
  for (const { symbol, formula, values, si, shown } of reply.steps) {
    const again = evaluate(formula, values);
    const allowed = 1e-9 * Math.max(Math.abs(si), 1e-12);
    const same = again === si || Math.abs(again - si) <= allowed;
    expect(same, `${reply.calculation}, step ${symbol}: ${formula} gives ${again}, the reply says ${si}`).toBe(true);
    expect(shown.startsWith(`${symbol} = `), shown).toBe(true);
  }
}
