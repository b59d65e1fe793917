import { readdirSync, readFileSync, statSync } from 'node:fs';
import { bareIn, isText } from './bareTexts.ts';
import { EXPECTING } from './expecting.ts';
import { calledName, keyName, literal, type Node, syntaxOf, walk } from './syntax.ts';

/** An English text with the place that says it. */
export interface Said {
  readonly text: string;
  /** The form for exactly one, of a text that is about a number of things. */
  readonly one?: string;
  readonly where: string;
}

/** What of a source file people may read. */
export interface Texts {
  /** English texts that go through `t`, `rich`, `message` or `plural`, and the phrases of refused input. */
  readonly said: readonly Said[];
  /** Texts on their way to the page that do not: `file:line text`. */
  readonly bare: readonly string[];
  /** Places of texts that get no value: `file:line {place} text`. */
  readonly empty: readonly string[];
}

const SAYERS = ['t', 'rich', 'message'];
export const placesIn = (text: string): string[] => [...text.matchAll(/\{(\w+)\}/g)].map((m) => m[1] ?? '');

/** Names of the values in an object as written; null where it cannot be seen which they are. */
const valueNames = (node: Node | undefined): readonly string[] | null => {
  if (node?.type !== 'ObjectExpression') return null;
  const names: string[] = [];
  for (const property of node.properties) {
    if (property.type === 'SpreadElement' || property.computed) return null;
    names.push(keyName(property));
  }
  return names;
};

const isFunction = ({ type }: Node): boolean =>
  ['ArrowFunctionExpression', 'FunctionExpression', 'FunctionDeclaration'].includes(type);

export const textsOf = (file: string, source: string): Texts => {
  const said: Said[] = [];
  const odd: string[] = [];
  const empty: string[] = [];
  const program = syntaxOf(file, source);
  const at = (node: Node): string => `${file}:${source.slice(0, node.start).split('\n').length}`;
  const lacking = (
    node: Node,
    text: string,
    values: Node | undefined,
    given: readonly string[] = [],
  ): void => {
    const names = values === undefined ? [] : valueNames(values);
    if (names === null) return;
    for (const place of placesIn(text))
      if (!names.includes(place) && !given.includes(place)) empty.push(`${at(node)} {${place}} ${text}`);
  };
  walk(program, (node, within) => {
    if (node.type === 'Property' && keyName(node) === 'expected') {
      const text = literal(node.value);
      if (text !== null && isText(text)) said.push({ text, where: at(node) });
    }
    if (node.type !== 'CallExpression') return;
    const name = calledName(node);
    const args = node.arguments;
    if (name in EXPECTING) {
      const text = literal(args[EXPECTING[name]?.(args.length) ?? 0]);
      if (text !== null && isText(text)) said.push({ text, where: at(node) });
    }
    if (node.callee.type !== 'Identifier') return;
    if (name === 'plural') {
      const [one, text] = [literal(args[1]), literal(args[2])];
      if (one === null || text === null) odd.push(`${at(node)} plural without literal forms`);
      else {
        said.push({ text, one, where: at(node) });
        // In a sentence with elements they fill places too.
        const around = within[0];
        const elements =
          around?.type === 'CallExpression' && calledName(around) === 'rich'
            ? (valueNames(around.arguments[1]) ?? [])
            : [];
        for (const form of [text, one]) lacking(node, form, args[3], ['n', ...elements]);
      }
    }
    if (!SAYERS.includes(name)) return;
    // At the top of a file it would be said once, in the language of that moment.
    if (name !== 'message' && !within.some(isFunction)) odd.push(`${at(node)} ${name} outside a function`);
    const text = literal(args[0]);
    if (text !== null) {
      said.push({ text, where: at(node) });
      // A message in a table may get its values later, where it is shown.
      if (name !== 'message' || args[1] !== undefined) lacking(node, text, args[1]);
    } else if (args[0]?.type === 'TemplateLiteral' || name === 'message')
      odd.push(`${at(node)} ${name} without a literal`);
  });
  return { said, bare: [...bareIn(program, at), ...odd], empty };
};

const filesOf = (path: string): string[] =>
  statSync(path).isDirectory()
    ? readdirSync(path, { recursive: true, encoding: 'utf8' })
        .filter((file) => /\.tsx?$/.test(file))
        .map((file) => `${path}/${file}`)
    : [path];

/** The texts of all sources in some folders and files, paths relative to the project's root. */
export const textsIn = (...paths: readonly string[]): Texts => {
  const all = paths.flatMap(filesOf).map((file) => textsOf(file, readFileSync(file, 'utf8')));
  return {
    said: all.flatMap((x) => x.said),
    bare: all.flatMap((x) => x.bare),
    empty: all.flatMap((x) => x.empty),
  };
};
