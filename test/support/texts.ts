import { readdirSync, readFileSync } from 'node:fs';
import { type ESTree, parseSync, Visitor } from 'vite';

/** What of a source file people may read. */
export interface Texts {
  /** English texts that go through `t`, `rich`, `message` or `plural`, each form of a plural by itself. */
  readonly said: readonly { readonly text: string; readonly one?: string }[];
  /** Texts on their way to the page that do not: `file:line text`. */
  readonly bare: readonly string[];
}

const SAYERS = ['t', 'rich', 'message'];
/** Attributes that are read by people. */
const READ_ALOUD = [
  'aria-label',
  'aria-description',
  'title',
  'placeholder',
  'alt',
  'label',
  'summary',
  'legend',
  'heading',
  'name',
];
const WORDS = /\p{L}{2}/u;
/** Signs, units and the house's own name are the same in every language. */
const SAME_EVERYWHERE =
  /^[\W\d_]*(km|mi|min|kg|g|ml|s|m|h|s\/km|s\/mi|GPX|CSV|GeoJSON|JSON|MP3|WebVTT|iCalendar|ISO|Soundline|bpm|kB|MB|pH|mp3|vtt|gpx|A4)[\W\d_]*$/u;
const isText = (text: string): boolean => WORDS.test(text) && !SAME_EVERYWHERE.test(text.trim());

const literal = (node: ESTree.Node | undefined): string | null =>
  node?.type === 'Literal' && typeof node.value === 'string'
    ? node.value
    : node?.type === 'TemplateLiteral' && node.expressions.length === 0
      ? (node.quasis[0]?.value.cooked ?? null)
      : node?.type === 'BinaryExpression' && node.operator === '+'
        ? joined(literal(node.left), literal(node.right))
        : null;
const joined = (a: string | null, b: string | null): string | null =>
  a === null || b === null ? null : a + b;

/** Everything that may come out as text of an expression that stands among the children of an element. */
const leaves = (node: ESTree.Node): ESTree.Node[] => {
  switch (node.type) {
    case 'ConditionalExpression':
      return [...leaves(node.consequent), ...leaves(node.alternate)];
    case 'LogicalExpression':
      return leaves(node.right);
    case 'BinaryExpression':
      return node.operator === '+' ? [...leaves(node.left), ...leaves(node.right)] : [];
    case 'ParenthesizedExpression':
      return leaves(node.expression);
    default:
      return [node];
  }
};

export const textsOf = (file: string, source: string): Texts => {
  const said: { text: string; one?: string }[] = [];
  const bare: string[] = [];
  const lineAt = (offset: number): number => source.slice(0, offset).split('\n').length;
  const note = (node: ESTree.Node, text: string): void => {
    if (isText(text)) bare.push(`${file}:${lineAt(node.start)} ${text.replace(/\s+/g, ' ').trim()}`);
  };
  const noteLeaves = (expression: ESTree.Node): void => {
    for (const leaf of leaves(expression)) {
      if (leaf.type === 'Literal' && typeof leaf.value === 'string') note(leaf, leaf.value);
      if (leaf.type === 'TemplateLiteral') note(leaf, leaf.quasis.map((q) => q.value.cooked ?? '').join(' '));
    }
  };
  const { program, errors } = parseSync(file, source);
  if (errors.length > 0) throw new Error(`${file}: ${errors[0]?.message}`);
  new Visitor({
    CallExpression: (call) => {
      if (call.callee.type !== 'Identifier') return;
      const [first, second, third] = call.arguments;
      if (call.callee.name === 'plural') {
        const [one, text] = [literal(second), literal(third)];
        if (one !== null && text !== null) said.push({ text, one });
        else bare.push(`${file}:${lineAt(call.start)} plural without literal forms`);
      }
      if (!SAYERS.includes(call.callee.name)) return;
      const text = literal(first);
      if (text !== null) said.push({ text });
      else if (first?.type === 'TemplateLiteral' || call.callee.name === 'message')
        bare.push(`${file}:${lineAt(call.start)} ${call.callee.name} without a literal`);
    },
    JSXText: (node) => note(node, node.value),
    JSXExpressionContainer: (node) => {
      // Attributes are visited by name below; here stand children of elements and, harmlessly, attribute values.
      if (node.expression.type !== 'JSXEmptyExpression' && !attributeValues.has(node))
        noteLeaves(node.expression);
    },
    JSXAttribute: (node) => {
      if (node.value?.type === 'JSXExpressionContainer') attributeValues.add(node.value);
      if (node.name.type !== 'JSXIdentifier' || !READ_ALOUD.includes(node.name.name)) return;
      // A form's `name` is for programs.
      if (node.name.name === 'name') return;
      if (node.value?.type === 'Literal') note(node, String(node.value.value));
      if (
        node.value?.type === 'JSXExpressionContainer' &&
        node.value.expression.type !== 'JSXEmptyExpression'
      )
        noteLeaves(node.value.expression);
    },
  }).visit(program);
  return { said, bare };
};
const attributeValues = new WeakSet<object>();

/** The texts of all sources in a folder, paths relative to the project's root. */
export const textsIn = (folder: string): Texts => {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.tsx?$/.test(file),
  );
  const all = files.map((file) => textsOf(`${folder}/${file}`, readFileSync(`${folder}/${file}`, 'utf8')));
  return { said: all.flatMap((x) => x.said), bare: all.flatMap((x) => x.bare) };
};
