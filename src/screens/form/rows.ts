/** Row `i` with a change in it; the others as they are. */
export const changedAt = <Row extends object>(
  rows: readonly Row[],
  i: number,
  change: Partial<Row>,
): readonly Row[] => rows.map((row, j) => (j === i ? { ...row, ...change } : row));

export const withoutAt = <Row>(rows: readonly Row[], i: number): readonly Row[] =>
  rows.filter((_, j) => j !== i);
