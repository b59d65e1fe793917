import { parseSync } from 'vite';

/** What a source file reaches for. */
export interface Reach {
  /** Module specifiers as written, types included. */
  readonly imports: readonly string[];
  /** Free names and members of the forbidden list that the file uses: `Date`, `Math.random`. */
  readonly uses: readonly string[];
}

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string';

const nameOf = (value: unknown): string =>
  isNode(value) && value.type === 'Identifier' ? String(value['name']) : '';

const textOf = (value: unknown): string =>
  isNode(value) && value.type === 'Literal' ? String(value['value']) : '';

const walk = (value: unknown, visit: (node: Node) => void): void => {
  if (Array.isArray(value)) for (const item of value) walk(item, visit);
  if (!isNode(value)) return;
  visit(value);
  for (const child of Object.values(value)) if (typeof child === 'object') walk(child, visit);
};

/** Reads a TypeScript source with the bundler's own parser. @throws where the source does not parse */
export const reachOf = (file: string, source: string, forbidden: readonly string[]): Reach => {
  const { program, errors } = parseSync(file, source);
  if (errors[0]) throw new Error(`${file}: ${errors[0].message}`);
  const imports: string[] = [];
  const uses = new Set<string>();
  walk(program, (node) => {
    const from = textOf(node['source']);
    if (from !== '') imports.push(from);
    const name =
      node.type === 'MemberExpression'
        ? `${nameOf(node['object'])}.${nameOf(node['property'])}`
        : nameOf(node);
    if (forbidden.includes(name)) uses.add(name);
  });
  return { imports, uses: [...uses] };
};
