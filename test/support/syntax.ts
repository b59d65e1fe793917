import { type ESTree, parseSync } from 'vite';

export type Node = ESTree.Node;

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string';

/** Every node of a source, each with those it stands in, the nearest first. */
export const walk = (
  node: Node,
  visit: (node: Node, within: readonly Node[]) => void,
  within: readonly Node[] = [],
): void => {
  visit(node, within);
  const inner = [node, ...within];
  for (const child of Object.values(node)) {
    for (const part of Array.isArray(child) ? child : [child]) if (isNode(part)) walk(part, visit, inner);
  }
};

/** Reads a TypeScript source with the bundler's own parser. @throws where the source does not parse */
export const syntaxOf = (file: string, source: string): Node => {
  const { program, errors } = parseSync(file, source);
  if (errors[0]) throw new Error(`${file}: ${errors[0].message}`);
  return program;
};

/** The text of a plain string, or of plain strings joined by `+`; null for anything else. */
export const literal = (node: Node | undefined): string | null => {
  if (node?.type === 'Literal') return typeof node.value === 'string' ? node.value : null;
  if (node?.type === 'TemplateLiteral')
    return node.expressions.length === 0 ? (node.quasis[0]?.value.cooked ?? null) : null;
  if (node?.type !== 'BinaryExpression' || node.operator !== '+') return null;
  const [left, right] = [literal(node.left), literal(node.right)];
  return left === null || right === null ? null : left + right;
};

/** The name of what a call calls: `t`, `push` of `list.push`; empty where it has none. */
export const calledName = (node: Node): string => {
  if (node.type !== 'CallExpression' && node.type !== 'NewExpression') return '';
  const { callee } = node;
  if (callee.type === 'Identifier') return callee.name;
  return callee.type === 'MemberExpression' && callee.property.type === 'Identifier'
    ? callee.property.name
    : '';
};

/** The name of a property or an attribute that is written out; empty for others. */
export const keyName = (node: Node): string => {
  if (node.type === 'JSXAttribute') return node.name.type === 'JSXIdentifier' ? node.name.name : '';
  if (node.type !== 'Property' || node.computed) return '';
  if (node.key.type === 'Identifier') return node.key.name;
  return literal(node.key) ?? '';
};
