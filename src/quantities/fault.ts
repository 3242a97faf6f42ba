/** One thing wrong with a document: where, what, and how to mend it. */
import type * as z from 'zod';

export interface Fault {
  /** Path of the field, for example roof.planes.2.slope. */
  readonly path: string;
  readonly message: string;
}

type Issue = z.core.$ZodIssue;

const pathText = (path: readonly PropertyKey[]): string => path.map(String).join('.') || '(the document)';

/**
 * Flattens zod's issues to one message per fault. Of a union (a bare value, an assumption or a question) only the
 * alternative that was meant is reported: the one that got furthest into the value.
 */
export function faultsOf(issues: readonly Issue[], prefix: readonly PropertyKey[] = []): Fault[] {
  return issues.flatMap((issue) => {
    const path = [...prefix, ...issue.path];
    if (issue.code === 'invalid_union' && issue.errors.length > 0)
      return faultsOf(meantAlternative(issue.errors), path);
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) => ({
        path: pathText([...path, key]),
        message: 'is not a field here; check its spelling or remove it',
      }));
    return [{ path: pathText(path), message: plainMessage(issue) }];
  });
}

function meantAlternative(errors: readonly (readonly Issue[])[]): readonly Issue[] {
  const depth = (list: readonly Issue[]): number => {
    const wrongKind = list.some((issue) => issue.code === 'invalid_type' && issue.path.length === 0);
    return (
      (wrongKind ? -100 : 0) -
      list.filter((issue) => issue.code === 'unrecognized_keys' || issue.code === 'invalid_type').length
    );
  };
  return errors.reduce((best, list) => (depth(list) > depth(best) ? list : best), errors[0] ?? []);
}

const kinds: Readonly<Record<string, string>> = {
  string: 'text in quotes, with its unit where it is a quantity',
  number: 'a number without quotes',
  int: 'a whole number',
  object: 'an object in braces',
  array: 'a list in brackets',
  boolean: 'true or false',
};
const kind = (expected: string): string => kinds[expected] ?? expected;

function plainMessage(issue: Issue): string {
  if (issue.code === 'invalid_type')
    return issue.input === undefined
      ? `is missing; give ${kind(issue.expected)}`
      : `must be ${kind(issue.expected)}`;
  if (issue.code === 'invalid_value') return `must be one of: ${issue.values.map(String).join(', ')}`;
  return issue.message;
}
