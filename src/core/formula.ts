import { type Dimension, dimensionText, divide, isPlain, multiply, PLAIN, raise, same } from './quantity/dimension.js';

/** A formula as it was written, read once. Symbols stand for SI numbers. */
export type Formula =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'symbol'; readonly name: string }
  | { readonly kind: 'minus'; readonly of: Formula }
  | { readonly kind: 'binary'; readonly op: Operator; readonly left: Formula; readonly right: Formula }
  | { readonly kind: 'call'; readonly name: string; readonly args: readonly Formula[] };

export type Operator = '+' | '-' | '*' | '/' | '^';

/** What a symbol stands for: its dimension, and whether it is a temperature on an absolute scale rather than a difference. */
export interface Shape {
  readonly dimension: Dimension;
  readonly absolute?: boolean;
}

/** A function that a formula may call. School algebra leaves `source` out; everything else names it. */
export interface FormulaFunction {
  readonly name: string;
  readonly args: readonly string[];
  readonly meaning: string;
  readonly source?: string;
  readonly apply: (...args: number[]) => number;
  /** @throws Error when the arguments do not have the dimensions that the function takes. */
  readonly shape: (args: readonly Shape[]) => Shape;
}

export type Functions = ReadonlyMap<string, FormulaFunction>;

export class FormulaError extends Error {
  override readonly name = 'FormulaError';
}

const PRECEDENCE: Record<Operator, number> = { '+': 1, '-': 1, '*': 2, '/': 2, '^': 4 };
const MINUS_PRECEDENCE = 3;

/**
 * Reads a formula: numbers, symbols, `+ - * / ^`, brackets and calls. `^` binds tightest and to the right.
 * @throws FormulaError with the position of what could not be read.
 */
export function parseFormula(text: string): Formula {
  const tokens = [...text.matchAll(/\s*(?:(\d+(?:\.\d+)?(?:e[+-]?\d+)?)|([A-Za-z_][A-Za-z0-9_]*)|([-+*/^(),]))/gy)];
  const read = tokens.reduce((length, token) => length + token[0].length, 0);
  if (text.slice(read).trim() !== '') throw new FormulaError(`cannot read "${text}" at position ${read}`);
  let next = 0;
  const peek = () => tokens[next]?.[3];
  const take = (sign: string) => {
    if (peek() !== sign)
      throw new FormulaError(`"${text}" needs ${sign} before position ${tokens[next]?.index ?? text.length}`);
    next += 1;
  };

  function operand(): Formula {
    const token = tokens[next];
    if (!token) throw new FormulaError(`"${text}" ends too early`);
    const [, number, name, sign] = token;
    next += 1;
    if (number !== undefined) return { kind: 'number', value: Number(number) };
    if (name !== undefined)
      return peek() === '(' ? { kind: 'call', name, args: callArguments() } : { kind: 'symbol', name };
    if (sign === '-') return { kind: 'minus', of: expression(MINUS_PRECEDENCE) };
    if (sign === '(') {
      const inner = expression(0);
      take(')');
      return inner;
    }
    throw new FormulaError(`"${text}" has ${sign} where a value should stand`);
  }

  function callArguments(): Formula[] {
    take('(');
    const args: Formula[] = [];
    while (peek() !== ')') {
      args.push(expression(0));
      if (peek() === ',') next += 1;
    }
    take(')');
    return args;
  }

  function expression(least: number): Formula {
    let left = operand();
    for (;;) {
      const op = peek() as Operator | undefined;
      const precedence = op === undefined ? undefined : PRECEDENCE[op];
      if (op === undefined || precedence === undefined || precedence < least) return left;
      next += 1;
      left = { kind: 'binary', op, left, right: expression(op === '^' ? MINUS_PRECEDENCE : precedence + 1) };
    }
  }

  const formula = expression(0);
  if (next < tokens.length)
    throw new FormulaError(`"${text}" has something left over at position ${tokens[next]!.index}`);
  return formula;
}

/** Every symbol that a formula reads, in order of appearance, each once. */
export function symbolsOf(formula: Formula): string[] {
  const names = new Set<string>();
  const visit = (node: Formula): void => {
    if (node.kind === 'symbol') names.add(node.name);
    for (const part of partsOf(node)) visit(part);
  };
  visit(formula);
  return [...names];
}

export function partsOf(node: Formula): readonly Formula[] {
  if (node.kind === 'minus') return [node.of];
  if (node.kind === 'binary') return [node.left, node.right];
  if (node.kind === 'call') return node.args;
  return [];
}

const APPLY: Record<Operator, (a: number, b: number) => number> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': (a, b) => a ** b,
};

/** The formula as a closure over SI numbers. @throws FormulaError for a function that is not in the list. */
export function compile(formula: Formula, functions: Functions): (values: Readonly<Record<string, number>>) => number {
  switch (formula.kind) {
    case 'number': {
      const { value } = formula;
      return () => value;
    }
    case 'symbol': {
      const { name } = formula;
      return (values) => values[name] ?? Number.NaN;
    }
    case 'minus': {
      const of = compile(formula.of, functions);
      return (values) => -of(values);
    }
    case 'binary': {
      const apply = APPLY[formula.op];
      const left = compile(formula.left, functions);
      const right = compile(formula.right, functions);
      return (values) => apply(left(values), right(values));
    }
    case 'call': {
      const { apply } = functionNamed(formula.name, functions);
      const args = formula.args.map((arg) => compile(arg, functions));
      return (values) => apply(...args.map((arg) => arg(values)));
    }
  }
}

export function functionNamed(name: string, functions: Functions): FormulaFunction {
  const found = functions.get(name);
  if (!found) throw new FormulaError(`there is no function ${name}`);
  return found;
}

/**
 * The dimension of a formula, checked part by part.
 * @throws FormulaError when it adds unlike things, raises to a power that is not a plain number, or reads an unknown symbol.
 */
export function shapeOf(formula: Formula, symbols: ReadonlyMap<string, Shape>, functions: Functions): Shape {
  const of = (part: Formula) => shapeOf(part, symbols, functions);
  switch (formula.kind) {
    case 'number':
      return { dimension: PLAIN };
    case 'symbol': {
      const found = symbols.get(formula.name);
      if (!found) throw new FormulaError(`unknown symbol: ${formula.name}`);
      return found;
    }
    case 'minus':
      return of(formula.of);
    case 'call':
      return functionNamed(formula.name, functions).shape(formula.args.map(of));
    case 'binary':
      return formula.op === '^'
        ? powerShape(formula.left, formula.right, of)
        : pairShape(formula.op, of(formula.left), of(formula.right));
  }
}

function powerShape(base: Formula, exponent: Formula, of: (part: Formula) => Shape): Shape {
  const { dimension } = of(base);
  if (!isPlain(of(exponent).dimension)) throw new FormulaError('an exponent must be a plain number');
  if (isPlain(dimension)) return { dimension };
  if (symbolsOf(exponent).length > 0)
    throw new FormulaError(`${dimensionText(dimension)} raised to a power that varies`);
  return { dimension: raise(dimension, compile(exponent, new Map())({})) };
}

function pairShape(op: Exclude<Operator, '^'>, left: Shape, right: Shape): Shape {
  if (op === '*') return { dimension: multiply(left.dimension, right.dimension) };
  if (op === '/') return { dimension: divide(left.dimension, right.dimension) };
  if (!same(left.dimension, right.dimension)) {
    throw new FormulaError(
      `cannot ${op === '+' ? 'add' : 'subtract'} ${dimensionText(right.dimension)} and ${dimensionText(left.dimension)}`,
    );
  }
  if (left.absolute && right.absolute && op === '+')
    throw new FormulaError('two temperatures on a scale cannot be added');
  return { dimension: left.dimension, absolute: Boolean(left.absolute) !== Boolean(right.absolute) };
}

/** How a leaf and a sign are written; one printer serves the formula text and the text with numbers. */
export interface Notation {
  readonly number: (value: number) => string;
  readonly symbol: (name: string) => string;
  readonly times: string;
  readonly over: string;
  readonly minus: string;
  /** `^2` or a raised figure. */
  readonly power: (exponent: string) => string;
}

export const PLAIN_TEXT: Notation = {
  number: (value) => String(value),
  symbol: (name) => name,
  times: '*',
  over: '/',
  minus: '-',
  power: (exponent) => `^${exponent}`,
};

const SUPERSCRIPT: Record<string, string> = { '2': '²', '3': '³', '4': '⁴', '5': '⁵' };

export const MEMBER_TEXT: Notation = {
  ...PLAIN_TEXT,
  times: '·',
  over: ' / ',
  minus: '−',
  power: (exponent) => SUPERSCRIPT[exponent] ?? `^${exponent}`,
};

/** A formula as text. Reading the text of `PLAIN_TEXT` gives the same formula again. */
export function printFormula(formula: Formula, notation: Notation = PLAIN_TEXT): string {
  const print = (node: Formula): string => {
    switch (node.kind) {
      case 'number':
        return notation.number(node.value);
      case 'symbol':
        return notation.symbol(node.name);
      case 'minus':
        return `${notation.minus}${bracket(node.of, MINUS_PRECEDENCE)}`;
      case 'call':
        return `${node.name}(${node.args.map((arg) => unbracketed(print(arg))).join(', ')})`;
      case 'binary':
        return printBinary(node);
    }
  };
  const precedenceOf = (node: Formula): number => {
    if (node.kind === 'binary') return PRECEDENCE[node.op];
    return node.kind === 'minus' ? MINUS_PRECEDENCE : 9;
  };
  const bracket = (node: Formula, least: number): string =>
    precedenceOf(node) < least ? `(${print(node)})` : print(node);
  const printBinary = (node: Formula & { kind: 'binary' }): string => {
    if (node.op === '^') {
      const exponent = bracket(node.right, MINUS_PRECEDENCE);
      const base = node.left.kind === 'symbol' ? spacedAsBase(notation.symbol(node.left.name)) : bracket(node.left, 5);
      return `${base}${notation.power(exponent)}`;
    }
    const precedence = PRECEDENCE[node.op];
    const left = bracket(node.left, precedence);
    const right = bracket(node.right, precedence + 1);
    if (node.op === '+') return `${left} + ${right}`;
    if (node.op === '-') return `${left} ${notation.minus} ${right}`;
    return `${left}${node.op === '*' ? notation.times : notation.over}${right}`;
  };
  return print(formula);
}

const unbracketed = (text: string): string => text.replace(/^\(([^()]*(?:\([^()]*\))?[^()]*)\)$/, '$1');

/** A value with its unit must stand in brackets before a power: `(0.6 m)²`. */
const spacedAsBase = (text: string): string => (/[\s−-]/.test(text) ? `(${text})` : text);
