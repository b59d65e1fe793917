import { EXPECTING } from './expecting.ts';
import { calledName, keyName, literal, type Node, walk } from './syntax.ts';

const WORDS = /\p{L}{2}/u;
/** Signs, units, names of formats and the house's own name are the same in every language. */
const SAME_EVERYWHERE =
  /^(?:[\W\d_]|\b(?:km|mi|min|kg|g|ml|s|m|h|GPX|CSV|GeoJSON|JSON|MP3|WebVTT|iCalendar|ISO|Soundline|bpm|kB|MB|mp3|vtt|gpx|A4|true|false)\b)*$/u;

export const isText = (text: string): boolean => WORDS.test(text) && !SAME_EVERYWHERE.test(text.trim());
/** Two words, or one that begins like a sentence. */
const isProse = (text: string): boolean =>
  isText(text) &&
  !/^\d+px /.test(text) &&
  (/\p{L}{2,}[,;:]? +\p{L}/u.test(text) || /^\p{Lu}\p{Ll}/u.test(text.trim()));
/** The words of a template that stand free, beside a blank. */
const isProseAround = (text: string): boolean => isText(text) && /(^|\s)\p{L}{2,}(\s|[.,:;!?]|$)/u.test(text);

/** Attributes that are read by people. */
const READ_ALOUD = [
  'aria-label',
  'aria-description',
  'title',
  'placeholder',
  'alt',
  'label',
  'summary',
  'hint',
];
/** Attributes and properties that are for programs; a refusal's are collected by themselves. */
const TECHNICAL =
  /^(class|className|id|for|type|href|src|rel|target|role|key|d|viewBox|transform|style|accept|inputMode|autocomplete|keys|field|name|value|scope|method|text-anchor|kind|mode|data-.*|aria-(?!label|description).*|uid|code|font|stroke|fill|expected|found|place)$/;
/** Calls whose texts are not for people: errors for developers, names of files, keys of stores, queries of the page. */
const UNREAD =
  /^(Error|TypeError|RangeError|DOMException|URL|Worker|RegExp|fileNameOf|saveFile|getItem|setItem|removeItem|getKept|querySelector|querySelectorAll|getElementById|createElement|setAttribute|getAttribute|addEventListener|removeEventListener|matchMedia|postMessage|request|dispatchEvent|log|warn|error|debug|startsWith|endsWith|includes|indexOf|split|replace|replaceAll|join|test|exec|is|has|get|set|signal)$/;
/** What a text becomes known to the languages by. */
const SAYERS = ['t', 'rich', 'message', 'plural'];
const COMPARES = ['===', '!==', '==', '!=', 'in'];

/** Everything that may come out as text of an expression among the children of an element. */
const leaves = (node: Node): Node[] => {
  switch (node.type) {
    case 'ConditionalExpression':
      return [...leaves(node.consequent), ...leaves(node.alternate)];
    case 'LogicalExpression':
      return [...leaves(node.left), ...leaves(node.right)];
    case 'BinaryExpression':
      return node.operator === '+' ? [...leaves(node.left), ...leaves(node.right)] : [];
    case 'ParenthesizedExpression':
      return leaves(node.expression);
    default:
      return [node];
  }
};

const words = (node: Node): string | null =>
  node.type === 'TemplateLiteral' ? node.quasis.map((q) => q.value.cooked ?? '').join(' ') : literal(node);

/** Whether a text at this place is for a program. */
const isUnread = (within: readonly Node[], text: Node): boolean => {
  let inner = text;
  for (const node of within) {
    if (node.type.startsWith('TS') && node.type !== 'TSAsExpression' && node.type !== 'TSSatisfiesExpression')
      return true;
    if (/^(Import|Export(All|Named))/.test(node.type) && 'source' in node && node.source === inner)
      return true;
    if (node.type === 'JSXAttribute' && TECHNICAL.test(keyName(node))) return true;
    if (node.type === 'Property' && (node.key === inner || TECHNICAL.test(keyName(node)))) return true;
    if (node.type === 'MemberExpression' && node.property === inner) return true;
    if (node.type === 'SwitchCase' && node.test === inner) return true;
    if (node.type === 'BinaryExpression' && COMPARES.includes(node.operator)) return true;
    if (node.type === 'ThrowStatement') return true;
    const called = calledName(node);
    if (UNREAD.test(called)) return true;
    // Values of a text are looked at like any other text; its own words are not.
    if (SAYERS.includes(called) && inner.type !== 'ObjectExpression') return true;
    if (called in EXPECTING) return true;
    inner = node;
  }
  return false;
};

/** Texts on their way to people that do not go through the languages: `file:line text`. */
export const bareIn = (program: Node, at: (node: Node) => string): string[] => {
  const found = new Map<Node, string>();
  const note = (node: Node, text: string): void => {
    found.set(node, `${at(node)} ${text.replace(/\s+/g, ' ').trim()}`);
  };
  const noteShown = (expression: Node): void => {
    for (const leaf of leaves(expression)) {
      const text = words(leaf);
      if (text !== null && isText(text)) note(leaf, text);
    }
  };
  walk(program, (node, within) => {
    if (node.type === 'JSXText' && isText(node.value)) note(node, node.value);
    if (node.type === 'JSXExpressionContainer' && within[0]?.type !== 'JSXAttribute')
      noteShown(node.expression);
    if (node.type === 'JSXAttribute' && READ_ALOUD.includes(keyName(node)) && node.value !== null)
      noteShown(node.value.type === 'JSXExpressionContainer' ? node.value.expression : node.value);
    // Anywhere else what reads like a sentence is one: in tables, in states, in what goes to other components.
    if (found.has(node) || (node.type !== 'Literal' && node.type !== 'TemplateLiteral')) return;
    const text = words(node);
    if (text === null || isUnread(within, node)) return;
    const parts = node.type === 'TemplateLiteral' && node.expressions.length > 0;
    if (parts ? isProseAround(text) : isProse(text)) note(node, text);
  });
  return [...found.values()];
};
