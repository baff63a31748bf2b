import { FormulaError, type FormulaFunction, type Functions, type Shape } from './formula.js';
import { type Dimension, dimensionOf, dimensionText, isPlain, PLAIN, raise, same } from './quantity/dimension.js';

/** An argument's or a result's unit: a coherent unit, or `temperature` for kelvin on the absolute scale. */
type ModelUnit = string;

const shapeOfUnit = (unit: ModelUnit): Shape =>
  unit === 'temperature' ? { dimension: dimensionOf('K'), absolute: true } : { dimension: dimensionOf(unit) };

/**
 * A named function beyond school algebra, for formulas. Arguments and result are SI numbers in the units given.
 * The argument list is the key order of `args`.
 */
export function model(spec: {
  name: string;
  args: Record<string, ModelUnit>;
  unit: ModelUnit;
  meaning: string;
  source: string;
  apply: (...args: number[]) => number;
}): FormulaFunction {
  const expected = Object.entries(spec.args).map(([name, unit]) => ({ name, shape: shapeOfUnit(unit) }));
  return {
    name: spec.name,
    args: Object.keys(spec.args),
    meaning: spec.meaning,
    source: spec.source,
    apply: spec.apply,
    shape(args) {
      if (args.length !== expected.length)
        throw new FormulaError(`${spec.name} takes ${expected.length} values, not ${args.length}`);
      expected.forEach(({ name, shape }, i) => {
        const got = args[i]!;
        if (!same(got.dimension, shape.dimension) || Boolean(got.absolute) !== Boolean(shape.absolute)) {
          throw new FormulaError(
            `${spec.name} takes ${name} in ${dimensionText(shape.dimension)}, not ${dimensionText(got.dimension)}`,
          );
        }
      });
      return shapeOfUnit(spec.unit);
    },
  };
}

/**
 * A named function over the rows of a list, for `f(own values, list_i(t_i, y_i))`: its own values first, then the values of
 * each row one after another. A column of unit `any` takes what it is given, alike in every row, and `unit` may follow from it.
 */
export function rowModel(spec: {
  name: string;
  own?: Record<string, ModelUnit>;
  columns: Record<string, ModelUnit | 'any'>;
  unit: ModelUnit | ((column: Dimension) => Dimension);
  meaning: string;
  source: string;
  apply: (rows: readonly (readonly number[])[], ...own: number[]) => number;
}): FormulaFunction {
  const own = Object.entries(spec.own ?? {});
  const columns = Object.entries(spec.columns);
  const rowsOf = <T>(values: readonly T[]): T[][] =>
    Array.from({ length: (values.length - own.length) / columns.length }, (_, row) =>
      values.slice(own.length + row * columns.length, own.length + (row + 1) * columns.length),
    );
  return {
    name: spec.name,
    args: [...own, ...columns].map(([name]) => name),
    meaning: spec.meaning,
    source: spec.source,
    apply: (...values) => spec.apply(rowsOf(values), ...values.slice(0, own.length)),
    shape(args) {
      if (args.length <= own.length || (args.length - own.length) % columns.length !== 0)
        throw new FormulaError(`${spec.name} takes ${own.length} values and rows of ${columns.length}`);
      const [first = []] = rowsOf(args);
      const wanted = columns.map(([, unit], i) => (unit === 'any' ? first[i]!.dimension : dimensionOf(unit)));
      const expected = [...own.map(([, unit]) => dimensionOf(unit)), ...rowsOf(args).flatMap(() => wanted)];
      for (const [i, { dimension }] of args.entries()) {
        if (!same(dimension, expected[i]!))
          throw new FormulaError(`${spec.name} takes ${dimensionText(expected[i]!)}, not ${dimensionText(dimension)}`);
      }
      const any = columns.findIndex(([, unit]) => unit === 'any');
      return {
        dimension: typeof spec.unit === 'string' ? dimensionOf(spec.unit) : spec.unit(first[any]?.dimension ?? PLAIN),
      };
    },
  };
}

const plainOnly = (name: string, apply: (...args: number[]) => number, meaning: string): FormulaFunction => ({
  name,
  args: ['x'],
  meaning,
  apply,
  shape(args) {
    if (!args.every((arg) => isPlain(arg.dimension))) throw new FormulaError(`${name} takes a plain number`);
    return { dimension: PLAIN };
  },
});

const alike = (
  name: string,
  args: string[],
  apply: (...args: number[]) => number,
  meaning: string,
): FormulaFunction => ({
  name,
  args,
  meaning,
  apply,
  shape(shapes) {
    const first = shapes[0];
    if (!first || !shapes.every((shape) => same(shape.dimension, first.dimension))) {
      throw new FormulaError(`${name} takes values of one dimension`);
    }
    return first;
  },
});

/** Radians throughout. */
const schoolAlgebra: readonly FormulaFunction[] = [
  {
    name: 'sqrt',
    args: ['x'],
    meaning: 'square root',
    apply: Math.sqrt,
    shape: ([arg]) => ({ dimension: raise(arg?.dimension ?? PLAIN, 0.5) }),
  },
  plainOnly('exp', Math.exp, 'e to the power x'),
  plainOnly('ln', Math.log, 'natural logarithm'),
  plainOnly('log10', Math.log10, 'decimal logarithm'),
  plainOnly('sin', Math.sin, 'sine, radians'),
  plainOnly('cos', Math.cos, 'cosine, radians'),
  plainOnly('tan', Math.tan, 'tangent, radians'),
  plainOnly('asin', Math.asin, 'inverse sine, radians'),
  plainOnly('acos', Math.acos, 'inverse cosine, radians'),
  plainOnly('atan', Math.atan, 'inverse tangent, radians'),
  plainOnly('ceil', Math.ceil, 'next whole number up'),
  plainOnly('floor', Math.floor, 'next whole number down'),
  alike('abs', ['x'], Math.abs, 'size without sign'),
  alike('min', ['a', 'b'], Math.min, 'the smallest'),
  alike('max', ['a', 'b'], Math.max, 'the largest'),
  alike('mod', ['a', 'b'], (a = 0, b = 1) => ((a % b) + b) % b, 'what is left of a after whole b, never negative'),
];

/** @throws Error when two functions share a name. */
export function functionList(models: readonly FormulaFunction[]): Functions {
  const list = new Map<string, FormulaFunction>();
  for (const entry of [...schoolAlgebra, ...models]) {
    if (list.has(entry.name)) throw new Error(`two functions are called ${entry.name}`);
    list.set(entry.name, entry);
  }
  return list;
}
