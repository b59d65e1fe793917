/** Prints a Markdown table, so that it can stand in DEVELOPERS.md as it is. */
export const printTable = (
  title: string,
  head: readonly string[],
  rows: readonly (readonly string[])[],
): void => {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  console.log(`\n### ${title}\n`);
  console.log([line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n'));
};

export const fixed = (x: number, digits: number): string => (Number.isFinite(x) ? x.toFixed(digits) : '–');
export const percent = (share: number, digits = 0): string =>
  Number.isFinite(share) ? `${fixed(100 * share, digits)} %` : '–';
