/** One thing wrong with a document: where, what, and how to mend it. */
import * as z from 'zod';

export interface Fault {
  /** Path of the field, for example roof.planes.2.slope. */
  readonly path: string;
  readonly message: string;
}

type Issue = z.core.$ZodIssue;
type IssueOf<C extends Issue['code']> = Extract<Issue, { code: C }>;

/** Keys of a hostile document may be as long as it likes. */
const LONGEST_KEY = 60;
const pathText = (path: readonly PropertyKey[]): string =>
  path.map((key) => shortened(String(key), LONGEST_KEY)).join('.') || '(the document)';
const shortened = (text: string, most: number): string =>
  text.length > most ? `${text.slice(0, most)}...` : text;

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

/** The alternative of the right kind that knows most of the keys; of several, the one with the fewest faults. */
function meantAlternative(errors: readonly (readonly Issue[])[]): readonly Issue[] {
  const farness = (list: readonly Issue[]): number => {
    const wrongKind = list.some(
      (issue) => (issue.code === 'invalid_type' || issue.code === 'invalid_value') && issue.path.length === 0,
    );
    const unknown = list.flatMap((issue) =>
      issue.code === 'unrecognized_keys' && issue.path.length === 0 ? issue.keys : [],
    );
    return (wrongKind ? 1e6 : 0) + unknown.length * 1e3 + list.length;
  };
  return errors.reduce((best, list) => (farness(list) < farness(best) ? list : best), errors[0] ?? []);
}

const kinds: Readonly<Record<string, string>> = {
  string: 'text in quotes, with its unit where it is a quantity',
  number: 'a number without quotes',
  int: 'a whole number without quotes',
  object: 'an object in braces',
  record: 'an object in braces',
  array: 'a list in brackets',
  tuple: 'a list in brackets',
  boolean: 'true or false, without quotes',
};
const kind = (expected: string): string => kinds[expected] ?? expected;
const oneOf = (values: readonly unknown[]): string =>
  values.length === 1 ? `"${values[0]}"` : `one of: ${values.map(String).join(', ')}`;

/** A message the schema itself gives is kept; zod's own, made for programmers, is said again in plain words. */
function plainMessage(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.input === undefined
        ? `is missing; give ${kind(issue.expected)}`
        : `must be ${kind(issue.expected)}`;
    case 'invalid_value':
      if (issue.input === undefined) return `is missing; give ${oneOf(issue.values)}`;
      return ownMessage(issue) ?? `must be ${oneOf(issue.values)}`;
    case 'invalid_union':
      return discriminatorMessage(issue);
    case 'invalid_key':
      return `has a name that cannot stand here: it ${issue.issues.map(plainMessage).join(' and ')}`;
    case 'too_small':
    case 'too_big':
      return ownMessage(issue) ?? sizeMessage(issue);
    case 'invalid_format':
      return ownMessage(issue) ?? formatMessage(issue);
    case 'custom':
      return ownMessage(issue) ?? 'cannot be used as it stands; compare it with the schema';
    default:
      return 'is not what can stand here; compare it with the schema';
  }
}

/** The message of the schema, or nothing when it is only zod's default. */
function ownMessage(issue: Issue): string | undefined {
  const usual = z.config().localeError?.(issue as z.core.$ZodRawIssue);
  const text = typeof usual === 'string' ? usual : usual?.message;
  return issue.message === text || issue.message === 'Invalid input' ? undefined : issue.message;
}

function discriminatorMessage(issue: IssueOf<'invalid_union'>): string {
  const options = 'options' in issue && Array.isArray(issue.options) ? issue.options : [];
  const key = 'discriminator' in issue ? String(issue.discriminator) : '';
  const given = (issue.input as Record<string, unknown> | undefined)?.[key];
  if (options.length === 0) return 'is none of the kinds that can stand here; compare it with the schema';
  return given === undefined ? `is missing; give ${oneOf(options)}` : `must be ${oneOf(options)}`;
}

const plural = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? '' : 's'}`;

function sizeMessage(issue: IssueOf<'too_small'> | IssueOf<'too_big'>): string {
  const small = issue.code === 'too_small';
  const limit = Number(small ? issue.minimum : issue.maximum);
  const least = small ? 'at least' : 'at most';
  if (issue.origin === 'string') {
    if (small && limit === 1) return 'is empty; write something';
    const length = String(issue.input ?? '').length;
    return `must have ${least} ${plural(limit, 'character')}; it has ${length}; ${small ? 'say more' : 'shorten it'}`;
  }
  if (issue.origin === 'array') {
    const length = Array.isArray(issue.input) ? issue.input.length : 0;
    return `must have ${least} ${plural(limit, 'entry').replace('entrys', 'entries')}; it has ${length}; ${small ? 'add what is missing' : 'remove some'}`;
  }
  if (!small && limit === Number.MAX_SAFE_INTEGER) return 'is too large a number; check it';
  const bound = issue.inclusive === false ? (small ? 'above' : 'below') : least;
  return `must be ${bound} ${limit}${typeof issue.input === 'number' ? `; it is ${issue.input}` : ''}`;
}

function formatMessage(issue: IssueOf<'invalid_format'>): string {
  const given = shortened(String(issue.input ?? ''), LONGEST_KEY);
  if (issue.format === 'date')
    return `"${given}" is no date; write year, month and day, for example "2026-03-31"`;
  return `"${given}" is not written as it must be here; compare it with the schema`;
}
