import { create, parseDependencies, type FactoryFunctionMap, type MathNode } from 'mathjs';
import type { ExpressionFault, ExpressionProblem } from './expressionProblem';
import { timeFunctions } from './timeFunctions';

/** A parser without a scope of functions: what may be called is looked up below, by us. */
const math = create({ parseDependencies } as unknown as FactoryFunctionMap);

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
    readonly fault: ExpressionFault,
    readonly word: string,
  ) {
    super(fault.kind);
  }
}

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
      if (typeof value !== 'number') throw new Refusal({ kind: 'onlyNumbers' }, String(value));
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
      throw new Refusal({ kind: 'notThisKind' }, node.toString());
  }
}

function buildSymbol(name: string): Evaluate {
  if (name === 'day' || name === 'hour' || name === 't') return (now) => now[name];
  const constant = own(constants, name);
  if (constant === undefined) throw new Refusal({ kind: 'unknown', name }, name);
  return () => constant;
}

function buildOperator(op: string, args: readonly Evaluate[]): Evaluate {
  const [a, b] = args;
  if (args.length === 1 && op === '-') return (now) => -a!(now);
  if (args.length === 1 && op === '+') return a!;
  const operator = own(operators, op);
  if (!operator || args.length !== 2) throw new Refusal({ kind: 'notUsed', name: op }, op);
  return (now) => operator(a!(now), b!(now));
}

function buildCall(name: string, nodes: readonly MathNode[]): Evaluate {
  const call = own(timeFunctions, name);
  if (!call) throw new Refusal({ kind: 'notCalled', name }, name);
  const [least, most] = own(counts, name) ?? [1, 1];
  if (nodes.length < least || nodes.length > most) {
    throw new Refusal({ kind: 'numbersOf', name, least, most, given: nodes.length }, name);
  }
  const args = nodes.map(build);
  return (now) => call(...args.map((arg) => arg(now)));
}

function read(text: string): Evaluate | ExpressionProblem {
  try {
    const tree = math.parse!(text);
    let nodes = 0;
    tree.traverse(() => void nodes++);
    if (nodes > MOST_NODES) return { fault: { kind: 'tooLong' }, at: 0 };
    return build(tree);
  } catch (error) {
    if (error instanceof Refusal) {
      return { fault: error.fault, at: Math.max(0, text.indexOf(error.word)) };
    }
    const { char } = error as { char?: unknown };
    const at =
      typeof char === 'number' ? Math.min(Math.max(0, char - 1), text.length) : text.length;
    return { fault: { kind: 'unreadable' }, at };
  }
}

/** A factor is at least 0 and at most this: a hundredfold of anything typed is a slip. */
const LARGEST = 100;

export type Sampled =
  | { readonly ok: true; readonly table: Float64Array }
  | { readonly ok: false; readonly problem: ExpressionProblem };

const nothing: ExpressionProblem = { fault: { kind: 'nothing' }, at: 0 };

/** The expression at every hour from the start on; refused with the hour where it goes wrong. */
export function sample(text: string, hours: number, clockHour: number): Sampled {
  const evaluate = text.trim() === '' ? nothing : read(text);
  if (typeof evaluate !== 'function') return { ok: false, problem: evaluate };
  const table = new Float64Array(hours);
  for (let t = 0; t < hours; t++) {
    const value = evaluate({ t, day: t / 24, hour: (t + clockHour) % 24 });
    if (!(value >= 0 && value <= LARGEST)) {
      const [day, hour] = [Math.floor(t / 24) + 1, (t + clockHour) % 24];
      const fault = { kind: 'outOfRange', day, hour, value, most: LARGEST } as const;
      return { ok: false, problem: { fault, at: 0 } };
    }
    table[t] = value;
  }
  return { ok: true, table };
}
