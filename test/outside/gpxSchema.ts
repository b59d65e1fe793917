import { DOMParser } from '@xmldom/xmldom';

/**
 * The GPX 1.1 schema (topografix.com/GPX/1/1/gpx.xsd), its whole content model and value spaces but for what other
 * namespaces put into `extensions`: seen, read in full in a copy of the schema. `?` none or one, `*` any number, no mark:
 * exactly one; in this order.
 */
const LEAF = ['name?', 'cmt?', 'desc?', 'src?', 'link*'];
const POINT = [
  'ele?',
  'time?',
  'magvar?',
  'geoidheight?',
  ...LEAF,
  'sym?',
  'type?',
  'fix?',
  'sat?',
  'hdop?',
  'vdop?',
  'pdop?',
  'ageofdgpsdata?',
  'dgpsid?',
  'extensions?',
];
const CONTENT: Readonly<Record<string, readonly string[]>> = {
  gpx: ['metadata?', 'wpt*', 'rte*', 'trk*', 'extensions?'],
  metadata: [
    'name?',
    'desc?',
    'author?',
    'copyright?',
    'link*',
    'time?',
    'keywords?',
    'bounds?',
    'extensions?',
  ],
  trk: [...LEAF, 'number?', 'type?', 'extensions?', 'trkseg*'],
  rte: [...LEAF, 'number?', 'type?', 'extensions?', 'rtept*'],
  trkseg: ['trkpt*', 'extensions?'],
  trkpt: POINT,
  rtept: POINT,
  wpt: POINT,
  link: ['text?', 'type?'],
};

const DECIMAL = /^[-+]?(\d+(\.\d*)?|\.\d+)$/;
/** xsd:dateTime. */
const DATE_TIME = /^-?\d{4,}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?(Z|[-+]\d\d:\d\d)?$/;
const within =
  (least: number, most: (n: number) => boolean) =>
  (text: string): boolean =>
    DECIMAL.test(text) && Number(text) >= least && most(Number(text));

const VALUES: Readonly<Record<string, (text: string) => boolean>> = {
  ele: (text) => DECIMAL.test(text),
  time: (text) => DATE_TIME.test(text) && !Number.isNaN(Date.parse(text)),
  magvar: within(0, (n) => n < 360),
  geoidheight: (text) => DECIMAL.test(text),
  fix: (text) => ['none', '2d', '3d', 'dgps', 'pps'].includes(text),
  dgpsid: (text) => /^\d+$/.test(text) && Number(text) <= 1023,
  '@lat': within(-90, (n) => n <= 90),
  '@lon': within(-180, (n) => n < 180),
  '@version': (text) => text === '1.1',
  '@creator': () => true,
  '@href': () => true,
};

const ATTRIBUTES: Readonly<Record<string, readonly string[]>> = {
  gpx: ['version', 'creator'],
  trkpt: ['lat', 'lon'],
  rtept: ['lat', 'lon'],
  wpt: ['lat', 'lon'],
  link: ['href'],
};

interface Node {
  readonly nodeName: string;
  readonly namespaceURI?: string | null;
  readonly nodeValue?: string | null;
  readonly textContent?: string | null;
  readonly childNodes: ArrayLike<Node>;
  readonly attributes?: ArrayLike<{ readonly name: string; readonly value: string }>;
}

const NAMESPACE = 'http://www.topografix.com/GPX/1/1';
const isForeign = (name: string): boolean => name === 'xmlns' || /^(xmlns|xsi):/.test(name);

/** Whether the names follow the model: each in its turn, as often as its mark allows. */
const follows = (names: readonly string[], model: readonly string[]): boolean => {
  let i = 0;
  for (const particle of model) {
    const name = particle.replace(/[?*]$/, '');
    let seen = 0;
    while (names[i] === name && (particle.endsWith('*') || seen === 0)) {
      i++;
      seen++;
    }
    if (seen === 0 && !/[?*]$/.test(particle)) return false;
  }
  return i === names.length;
};

const faultsOf = (node: Node, path: string): string[] => {
  const here = `${path}/${node.nodeName}`;
  if (node.namespaceURI !== NAMESPACE) return [`${here}: another namespace`];
  if (node.nodeName === 'extensions') return [];
  const children = Array.from(node.childNodes).filter((n) => !n.nodeName.startsWith('#'));
  const model = CONTENT[node.nodeName];
  const text = node.textContent ?? '';
  const faults: string[] = [];
  if (model === undefined) {
    if (children.length > 0) faults.push(`${here}: elements in a value`);
    else if (VALUES[node.nodeName]?.(text) === false) faults.push(`${here}: ${text}`);
  } else {
    if (
      !follows(
        children.map((c) => c.nodeName),
        model,
      )
    )
      faults.push(`${here}: ${children.map((c) => c.nodeName).join(' ')}`);
    const own = Array.from(node.childNodes).some(
      (n) => n.nodeName === '#text' && /\S/.test(n.nodeValue ?? ''),
    );
    if (own) faults.push(`${here}: text between elements`);
  }
  const attributes = Array.from(node.attributes ?? []).filter((a) => !isForeign(a.name));
  const wanted = ATTRIBUTES[node.nodeName] ?? [];
  for (const name of wanted) if (!attributes.some((a) => a.name === name)) faults.push(`${here}: no ${name}`);
  for (const { name, value } of attributes)
    if (!wanted.includes(name) || VALUES[`@${name}`]?.(value) !== true)
      faults.push(`${here}: ${name}="${value}"`);
  return [...faults, ...children.flatMap((c) => faultsOf(c, here))];
};

/** What is not valid in a GPX 1.1 file; nothing where it is. Throws where it is not well-formed. */
export const gpxFaults = (text: string): string[] => {
  const onError = (level: string, message: string): void => {
    throw new Error(`${level}: ${message}`);
  };
  const { documentElement } = new DOMParser({ onError }).parseFromString(text, 'text/xml');
  if (documentElement === null || documentElement.nodeName !== 'gpx') return ['no gpx'];
  return faultsOf(documentElement as unknown as Node, '');
};
