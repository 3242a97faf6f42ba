/**
 * Check values kept as printed: one line a row, first a name without spaces, then one number for each column. Used by
 * tables of tests only. @throws when a row is not complete, or the table is empty.
 */
export function textTable<const K extends string>(
  columns: readonly K[],
  text: string,
): readonly (Readonly<Record<K, number>> & { readonly name: string })[] {
  const rows = text
    .trim()
    .split('\n')
    .filter(Boolean)
    .map((line) => line.trim().split(/\s+/));
  if (rows.length === 0) throw new Error('a table of check values is empty');
  return rows.map(([name = '', ...cells]) => {
    const numbers = cells.map(Number);
    if (numbers.length !== columns.length || numbers.some(Number.isNaN))
      throw new Error(`the row ${name} does not have ${columns.length} numbers`);
    const entries = columns.map((column, i) => [column, numbers[i]]);
    return { name, ...(Object.fromEntries(entries) as Record<K, number>) };
  });
}
