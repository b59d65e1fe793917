/** Everything printed so far, Markdown. */
const printed: string[] = [];

/** Prints a Markdown table, so that it can stand in DEVELOPERS.md as it is. */
export const printTable = (
  title: string,
  head: readonly string[],
  rows: readonly (readonly string[])[],
): void => {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const text = [`### ${title}`, '', ...[head, head.map(() => '---'), ...rows].map(line)].join('\n');
  printed.push(text);
  console.log(`${text}\n`);
};

/** A page with all that was printed between its two marks. @throws where it has no marks */
export const withTables = (page: string, mark = 'bench'): string => {
  const [begin, end] = [`<!-- ${mark} -->`, `<!-- /${mark} -->`];
  const [from, to] = [page.indexOf(begin), page.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`the page needs ${begin} and ${end}`);
  return `${page.slice(0, from)}${begin}\n\n${printed.join('\n\n')}\n\n${page.slice(to)}`;
};

export const fixed = (x: number, digits: number): string => (Number.isFinite(x) ? x.toFixed(digits) : '–');
export const percent = (share: number, digits = 0): string =>
  Number.isFinite(share) ? `${fixed(100 * share, digits)} %` : '–';
