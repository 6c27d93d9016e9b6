/** Turns schema issues into sentences that name the field and say what was met. */
import type { z } from 'zod';

export interface Problem {
  /** 'parts.card.spec.length' */
  readonly path: string;
  readonly message: string;
}

type Issue = z.core.$ZodIssue;

/** No person reads more than this many complaints about one file. */
const MOST_PROBLEMS = 20;

export function describeIssues(issues: readonly Issue[], input: unknown): readonly Problem[] {
  return issues.slice(0, MOST_PROBLEMS).flatMap((issue) => explain(issue, input, []));
}

function explain(issue: Issue, input: unknown, above: readonly PropertyKey[]): readonly Problem[] {
  const path = [...above, ...issue.path];
  const met = valueAt(input, path);
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    const branch = deepestBranch(issue.errors);
    return branch.flatMap((inner) => explain(inner, input, path));
  }
  if (issue.code === 'unrecognized_keys') {
    return [{ path: join(path), message: `unknown field ${issue.keys.map((key) => `'${key}'`).join(', ')}` }];
  }
  return [
    { path: join(path), message: `${sentence(issue)}${met === undefined ? '' : `, met ${show(met)}`}` },
  ];
}

/** The branch of a union that came furthest before it failed is the one the author meant. */
function deepestBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] {
  const depth = (branch: readonly Issue[]) => Math.max(0, ...branch.map((issue) => issue.path.length));
  return branches.reduce((best, branch) => (depth(branch) > depth(best) ? branch : best));
}

function sentence(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.input === undefined && issue.message.includes('undefined')
        ? 'is missing'
        : `must be a ${issue.expected}`;
    case 'too_small':
      return `must be at least ${issue.minimum}${issue.origin === 'string' || issue.origin === 'array' ? ' long' : ''}`;
    case 'too_big':
      return `must be at most ${issue.maximum}${issue.origin === 'string' || issue.origin === 'array' ? ' long' : ''}`;
    case 'invalid_value':
      return `must be one of ${issue.values.map(String).join(', ')}`;
    case 'invalid_union':
      return 'is of no known kind';
    default:
      return issue.message;
  }
}

function join(path: readonly PropertyKey[]): string {
  return path.length === 0 ? 'plan' : path.map(String).join('.');
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  let value = input;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

/** A short, harmless rendering of foreign data. */
function show(value: unknown): string {
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return String(value);
  if (typeof value === 'string') return `'${value.length > 40 ? `${value.slice(0, 40)}…` : value}'`;
  return Array.isArray(value) ? 'a list' : 'an object';
}
