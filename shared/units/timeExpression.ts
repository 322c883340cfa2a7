import { say as problems } from '../words/problems';
import { create, parseDependencies, type FactoryFunctionMap, type MathNode } from 'mathjs';
import type { ExpressionProblem } from './expressionProblem';

const say = problems.expression;

/** A parser without a scope of functions: what may be called is looked up below, by us. */
const math = create({ parseDependencies } as unknown as FactoryFunctionMap);

/** To so many decimals. */
const round = (value: number, decimals = 0): number => {
  const scale = 10 ** decimals;
  return Math.round(value * scale) / scale;
};

const functions: Readonly<Record<string, (...numbers: number[]) => number>> = {
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  exp: Math.exp,
  log: (value, base = Math.E) =>
    base === Math.E ? Math.log(value) : Math.log(value) / Math.log(base),
  sqrt: Math.sqrt,
  abs: Math.abs,
  floor: Math.floor,
  ceil: Math.ceil,
  round,
  min: Math.min,
  max: Math.max,
  mod: (a, b) => a - b * Math.floor(a / b),
};
/** With how many numbers each is called; one where nothing is said. */
const counts: Readonly<Record<string, readonly [least: number, most: number]>> = {
  log: [1, 2],
  round: [1, 2],
  mod: [2, 2],
  min: [1, Infinity],
  max: [1, Infinity],
};
const constants: Readonly<Record<string, number>> = { pi: Math.PI, e: Math.E };
const operators: Readonly<Record<string, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': (a, b) => a ** b,
  '<': (a, b) => Number(a < b),
  '>': (a, b) => Number(a > b),
  '<=': (a, b) => Number(a <= b),
  '>=': (a, b) => Number(a >= b),
};
const own = <T>(table: Readonly<Record<string, T>>, name: string): T | undefined =>
  Object.hasOwn(table, name) ? table[name] : undefined;

export interface Moment {
  readonly day: number;
  readonly hour: number;
  readonly t: number;
}
type Evaluate = (now: Moment) => number;

class Refusal extends Error {
  constructor(
    message: string,
    readonly word: string,
  ) {
    super(message);
  }
}

const ALLOWED = say.allowed(Object.keys(functions).join(', '));
const MOST_NODES = 300;

/** The shapes of a parsed expression that we read; the library's own evaluation is never used. */
interface Shape {
  readonly type: string;
  readonly value?: unknown;
  readonly name?: string;
  readonly op?: string;
  readonly args?: readonly MathNode[];
  readonly fn?: MathNode;
  readonly content?: MathNode;
  readonly condition?: MathNode;
  readonly trueExpr?: MathNode;
  readonly falseExpr?: MathNode;
}

/** Turns a parsed expression into a function made only of what is listed above. */
function build(node: MathNode): Evaluate {
  const shape = node as unknown as Shape;
  switch (shape.type) {
    case 'ConstantNode': {
      const { value } = shape;
      if (typeof value !== 'number')
        throw new Refusal(`${say.onlyNumbers} ${ALLOWED}`, String(value));
      return () => value;
    }
    case 'ParenthesisNode':
      return build(shape.content!);
    case 'SymbolNode':
      return buildSymbol(shape.name!);
    case 'OperatorNode':
      return buildOperator(shape.op!, shape.args!.map(build));
    case 'FunctionNode':
      return buildCall((shape.fn as unknown as Shape).name ?? '', shape.args!);
    case 'ConditionalNode': {
      const [test, yes, no] = [shape.condition!, shape.trueExpr!, shape.falseExpr!].map(build);
      return (now) => (test!(now) !== 0 ? yes!(now) : no!(now));
    }
    default:
      throw new Refusal(`${say.notThisKind} ${ALLOWED}`, node.toString());
  }
}

function buildSymbol(name: string): Evaluate {
  if (name === 'day' || name === 'hour' || name === 't') return (now) => now[name];
  const constant = own(constants, name);
  if (constant === undefined) throw new Refusal(`${say.unknown(name)} ${ALLOWED}`, name);
  return () => constant;
}

function buildOperator(op: string, args: readonly Evaluate[]): Evaluate {
  const [a, b] = args;
  if (args.length === 1 && op === '-') return (now) => -a!(now);
  if (args.length === 1 && op === '+') return a!;
  const operator = own(operators, op);
  if (!operator || args.length !== 2) throw new Refusal(`${say.notUsed(op)} ${ALLOWED}`, op);
  return (now) => operator(a!(now), b!(now));
}

function buildCall(name: string, nodes: readonly MathNode[]): Evaluate {
  const call = own(functions, name);
  if (!call) throw new Refusal(`${say.notCalled(name)} ${ALLOWED}`, name);
  const [least, most] = own(counts, name) ?? [1, 1];
  if (nodes.length < least || nodes.length > most) {
    const range = least === most ? String(least) : `${least}–${most === Infinity ? '…' : most}`;
    throw new Refusal(say.numbersOf(name, range, String(nodes.length)), name);
  }
  const args = nodes.map(build);
  return (now) => call(...args.map((arg) => arg(now)));
}

function read(text: string): Evaluate | ExpressionProblem {
  try {
    const tree = math.parse!(text);
    let nodes = 0;
    tree.traverse(() => void nodes++);
    if (nodes > MOST_NODES) return { message: say.tooLong, at: 0 };
    return build(tree);
  } catch (error) {
    if (error instanceof Refusal) {
      return { message: error.message, at: Math.max(0, text.indexOf(error.word)) };
    }
    const { char } = error as { char?: unknown };
    const at =
      typeof char === 'number' ? Math.min(Math.max(0, char - 1), text.length) : text.length;
    return { message: `${say.unreadable} ${ALLOWED}`, at };
  }
}

/** A factor is at least 0 and at most this: a hundredfold of anything typed is a slip. */
const LARGEST = 100;

export type Sampled =
  | { readonly ok: true; readonly table: Float64Array }
  | { readonly ok: false; readonly problem: ExpressionProblem };

/** The expression at every hour from the start on; refused with the hour where it goes wrong. */
export function sample(text: string, hours: number, clockHour: number): Sampled {
  const evaluate = text.trim() === '' ? { message: say.nothing, at: 0 } : read(text);
  if (typeof evaluate !== 'function') return { ok: false, problem: evaluate };
  const table = new Float64Array(hours);
  for (let t = 0; t < hours; t++) {
    const value = evaluate({ t, day: t / 24, hour: (t + clockHour) % 24 });
    if (!(value >= 0 && value <= LARGEST)) {
      const message = say.outOfRange(
        String(Math.floor(t / 24) + 1),
        String((t + clockHour) % 24),
        String(value),
        String(LARGEST),
      );
      return { ok: false, problem: { message, at: 0 } };
    }
    table[t] = value;
  }
  return { ok: true, table };
}
